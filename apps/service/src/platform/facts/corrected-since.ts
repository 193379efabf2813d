import type { EntityManager } from 'typeorm';

/** What a transaction sees: which others had committed when it began, and when that was. */
export interface Seen {
  readonly snapshot: string;
  readonly at: Date;
}

export const seenNow = async (tx: EntityManager): Promise<Seen> => {
  const [seen] = await tx.query<[Seen]>('select pg_current_snapshot()::text as snapshot, now() as at');
  return seen;
};

/** The time of recording is set before the commit and alone would not tell; it keeps the look at the journal short. */
const SINCE = `
  select from fact.journal j where j.recorded_at > $2::timestamptz - interval '1 hour'
    and not pg_visible_in_snapshot(j.transaction, $1::pg_snapshot)
    and exists (select from fact.correction c where c.entry_id = j.id) limit 1`;

/** Whether a correction has been committed that was not seen then. */
export const correctedSince = async (tx: EntityManager, { snapshot, at }: Seen): Promise<boolean> =>
  (await tx.query<unknown[]>(SINCE, [snapshot, at])).length > 0;
