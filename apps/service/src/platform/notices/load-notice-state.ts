import type { EntityManager } from 'typeorm';
import type { NoticeView } from '@hull-record/contracts';
import {
  concernOf,
  followUpFigures,
  inspectionOf,
  notifiedBy,
  type FollowUpFigures,
  type RecipientKind,
} from '@hull-record/trade';
import type { HeldHulls, HeldRow } from '../holds/load-held-hulls.js';
import { dayIn, MAILINGS, RECIPIENTS, REPORTS } from './duty.sql.js';

/** A letter that was mailed; days are of the plant. */
export interface Letter {
  readonly id: string;
  readonly hull_id: string;
  readonly dealer_id: string | null;
  readonly owner_id: string | null;
  readonly to_what: RecipientKind;
  readonly class: string;
  readonly proof: string | null;
  readonly day: string;
  readonly happenedAt: string;
  readonly returned: { readonly why: string; readonly happenedAt: string } | null;
}

/** Somebody a notice goes to; a dealer has as many letters as hulls that are concerned. */
export interface Addressee {
  readonly kind: RecipientKind;
  /** Id of the dealer or of the owner's entry. */
  readonly id: string;
  readonly dealer: string | null;
  readonly hullIds: readonly string[];
  readonly hasAddress: boolean;
  readonly letters: readonly Letter[];
}

/** A hull with its day of manufacture in the plant's calendar. */
export type ConcernedHull = HeldRow & {
  readonly hull: string;
  readonly builtOn: string | null;
  readonly startedOn: string;
};

/** How far a notice has come. */
export interface NoticeState {
  readonly noticed: readonly ConcernedHull[];
  readonly contained: readonly ConcernedHull[];
  readonly outside: readonly ConcernedHull[];
  readonly addressees: readonly Addressee[];
  /** Day of the letter by which everybody was written to; null while somebody was not. */
  readonly notifiedOn: string | null;
  readonly figures: FollowUpFigures;
  readonly reports: NoticeView['reports'];
}

interface RecipientRow {
  readonly kind: RecipientKind;
  readonly hull_id: string;
  readonly id: string;
  readonly dealer: string | null;
  readonly hasAddress: boolean;
}

/**
 * Loads whom a notice concerns, whom it goes to, and who was written to.
 *
 * @param noticeId null: of the notice that would be given now
 * @param discoveredOn the day of discovery, from which the look-back counts
 */
export const loadNoticeState = async (
  tx: EntityManager,
  noticeId: string | null,
  held: HeldHulls,
  discoveredOn: string,
): Promise<NoticeState> => {
  const hulls = await withDays(tx, held);
  const of = (concern: ReturnType<typeof concernOf>): ConcernedHull[] =>
    hulls.filter(({ leftAt, builtOn }) => concernOf({ leftPlant: leftAt !== null, builtOn }, discoveredOn) === concern);
  const noticed = of('noticed');
  const letters = await tx.query<Letter[]>(MAILINGS, [noticeId]);
  const rows = await tx.query<RecipientRow[]>(RECIPIENTS, [noticed.map(({ owner }) => owner)]);
  const addressees = addresseesOf(rows, letters);
  return {
    ...{ noticed, contained: of('contained'), outside: of('outside'), addressees },
    notifiedOn: notifiedOn(addressees),
    figures: figuresOf(noticed, letters),
    reports: await tx.query<NoticeView['reports']>(REPORTS, [noticeId]),
  };
};

/** A hull in which the fault was found is concerned, however far the hold was narrowed since. */
const hadTheFault = ({ said }: HeldRow): boolean => said.some(({ what }) => what === 'found' || what === 'repaired');

const withDays = async (tx: EntityManager, { rows }: HeldHulls): Promise<readonly ConcernedHull[]> => {
  const reached = rows.filter(
    (row): row is HeldRow & { hull: string } => (row.reached || hadTheFault(row)) && row.hull !== null,
  );
  const instants = [...new Set(reached.flatMap((row) => [row.builtAt ?? row.leftAt ?? row.startedAt, row.startedAt]))];
  const days = await tx.query<{ at: string; day: string }[]>(
    `select x.at, ${dayIn('x.at::timestamptz', 'h.plant_id')} as day
     from unnest($1::text[]) x(at) cross join (select plant_id from fact.hull where id = any($2) limit 1) h`,
    [instants, reached.map(({ owner }) => owner)],
  );
  const dayOf = new Map(days.map(({ at, day }) => [at, day]));
  return reached.map((row) => ({
    ...row,
    // A boat that left without a release on record was made by the day it left at the latest.
    builtOn: dayOf.get(row.builtAt ?? row.leftAt ?? '') ?? null,
    startedOn: dayOf.get(row.startedAt) ?? '',
  }));
};

const addresseesOf = (rows: readonly RecipientRow[], letters: readonly Letter[]): readonly Addressee[] => {
  const byId = new Map<string, Addressee>();
  for (const { kind, id, dealer, hull_id, hasAddress } of rows) {
    const before = byId.get(id);
    const own = letters.filter((letter) => letter.dealer_id === id || letter.owner_id === id);
    byId.set(id, { kind, id, dealer, hasAddress, letters: own, hullIds: [...(before?.hullIds ?? []), hull_id] });
  }
  return [...byId.values()];
};

/** Hulls of somebody that no letter is about yet. */
export const unwritten = ({ hullIds, letters }: Addressee): readonly string[] =>
  hullIds.filter((hull) => !letters.some(({ hull_id }) => hull_id === hull));

const notifiedOn = (addressees: readonly Addressee[]): string | null => {
  if (addressees.length === 0 || addressees.some((each) => unwritten(each).length > 0)) return null;
  const first = addressees.flatMap(({ hullIds, letters }) =>
    hullIds.map((hull) => letters.find(({ hull_id }) => hull_id === hull)?.day ?? ''),
  );
  return [...first].sort().at(-1) ?? null;
};

const figuresOf = (noticed: readonly ConcernedHull[], letters: readonly Letter[]): FollowUpFigures =>
  followUpFigures(
    noticed.map(({ owner, said }) => ({
      leftPlant: true,
      ...inspectionOf(said.map(({ what }) => what)),
      notified: notifiedBy(
        letters
          .filter(({ hull_id, to_what }) => hull_id === owner && to_what === 'first purchaser')
          .map(({ returned }) => ({ returned: returned !== null })),
      ),
    })),
  );
