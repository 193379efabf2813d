import type { Envelope } from '@hull-record/contracts';

/** What the service found wrong with an entry, or the device when it could not be sent as it is. */
export interface EntryProblem {
  /** As in the problem details of the service; `not-made` when what it is about never came to be. */
  readonly type: string;
  readonly status: number;
  readonly detail: string;
  readonly errors: readonly { readonly pointer: string; readonly detail: string }[];
}

/** The id of something that an earlier entry makes: of its own, or of one of the parts that it was about. */
export interface MadeBy {
  readonly entry: string;
  readonly part: string | null;
}

/** The fields that the outbox itself puts into the body of every entry. */
export type OfEnvelope = Omit<Envelope, 'station'>;

/** Something this device wrote: it stays here until the service has it, or a person set it aside. */
export interface Entry {
  /** Its place in the order of writing; given by the database. */
  readonly order: number;
  /** Made here; the id of the fact, the same at every try. */
  readonly id: string;
  /** As the route table spells it, with the values of its parameters. */
  readonly path: string;
  readonly parameters: Readonly<Record<string, string | MadeBy>>;
  readonly body: Readonly<Record<string, unknown>> & OfEnvelope;
  /** What it has to keep its order in: the parts it is about, else the lot or hull. */
  readonly lanes: readonly string[];
  /** What people know it by, such as "86-1-H, L2", and what was entered, such as "14 mil". */
  readonly about: string;
  readonly detail: string;
  /** Under the credential of an enrolled device, or in the session of who signed in. */
  readonly under: 'device' | 'session';
  readonly hasPhoto: boolean;
  readonly state: 'waiting' | 'refused' | 'aside';
  readonly problem: EntryProblem | null;
  /** Why it was set aside, by whom and when. */
  readonly aside: { readonly reason: string; readonly by: string; readonly at: string } | null;
}

/** The bytes of a photo, as they are kept. */
export interface Photo {
  readonly bytes: ArrayBuffer;
  readonly type: string;
  readonly name: string;
}

/** What the service answered to an entry. */
export interface Sent {
  readonly id: string;
  readonly path: string;
  readonly about: string;
  readonly detail: string;
  readonly at: string;
  readonly result: unknown;
}
