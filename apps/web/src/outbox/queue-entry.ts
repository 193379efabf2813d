import type { ParameterOf, PostBody, PostPath } from '../api/contract.js';
import { clock } from '../device/clock.js';
import { holding } from '../device/holder.js';
import { drain } from './drain.js';
import type { MadeBy, OfEnvelope } from './entry.js';
import { keepEntry } from './kept-entries.js';
import { outboxStore } from './outbox-store.js';

/** Nobody has this tablet, or it is not known which device it is: nothing may be entered. */
export class NobodyHere extends Error {}
/** This device could not keep it: its storage is full, or the browser keeps nothing for pages. */
export class NotKept extends Error {}

/** What a page gives of an entry; the outbox puts the rest of its envelope to it. */
export type BodyOf<P extends PostPath> = Omit<PostBody<P>, keyof OfEnvelope> & {
  readonly happenedAt?: string | undefined;
};

export interface QueueOptions {
  /** The parts it is about, else the hull or lot: in these it keeps its order. */
  readonly lanes: readonly string[];
  /** What people know it by, such as "86-1-H, L2". */
  readonly about: string;
  /** What was entered, such as "14 mil". */
  readonly detail?: string;
  readonly photo?: File;
}

/**
 * Keeps an entry on this device and sends it as soon as it may go; every write of the station goes this way.
 *
 * @returns its id, once it is on the disk of this device: the page may say "kept" then, and not before
 * @throws NobodyHere, NotKept
 */
export const queueEntry = async <P extends PostPath>(
  path: P,
  parameters: Readonly<Record<ParameterOf<P>, string | MadeBy>>,
  body: BodyOf<P>,
  { lanes, about, detail = '', photo }: QueueOptions,
): Promise<string> => {
  const id = crypto.randomUUID();
  const { device, enrolled } = holding.place();
  const holder = holding.get();
  if (holder === null || device === null) throw new NobodyHere();
  const at = clock.instant();
  const envelope: OfEnvelope = {
    ...{ id, enteredBy: holder.badge, device, happenedAt: body.happenedAt ?? at },
    ...{ enteredAt: at, clockOffsetMs: clock.offsetMs() },
  };
  const entry = {
    ...{ id, path, parameters, lanes, about, detail, hasPhoto: photo !== undefined },
    body: { ...body, ...envelope },
    under: enrolled ? ('device' as const) : ('session' as const),
    ...{ state: 'waiting' as const, problem: null, aside: null },
  };
  try {
    await keepEntry(entry, photo && { bytes: await photo.arrayBuffer(), type: photo.type, name: photo.name });
  } catch {
    throw new NotKept();
  }
  await outboxStore.changed();
  void drain().catch(() => undefined);
  return id;
};
