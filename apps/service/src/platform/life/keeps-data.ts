import type { EntityManager } from 'typeorm';
import { keptUntil } from './keep-until.js';

/** A legal hold that has not ended. */
export interface OpenLegalHold {
  readonly id: string;
  readonly reason: string;
  readonly since: Date;
}

/** What keeps the personal data of a hull from being erased on a day. */
export interface KeepsData {
  /** YYYY-MM-DD; null when no such day is still to come. */
  readonly until: string | null;
  /** In words; null when nothing keeps it. */
  readonly because: string | null;
  readonly holds: readonly OpenLegalHold[];
}

const HOLDS = `
  select h.id, h.reason, h.happened_at as since from fact.legal_hold h
  where h.hull_id = $1 and not exists (select from fact.legal_hold_ended e where e.legal_hold_id = h.id)
  order by h.happened_at, h.id`;

/** Legal holds and the day until which the record is kept, by the rules of the markets of the boat. */
export const keepsData = async (tx: EntityManager, hullId: string, today: string): Promise<KeepsData> => {
  const holds = await tx.query<OpenLegalHold[]>(HOLDS, [hullId]);
  const kept = await keptUntil(tx, hullId);
  const until = kept && kept.day >= today ? kept.day : null;
  const because = [
    ...holds.map(({ reason }) => `Legal hold: ${reason}`),
    ...(kept && until ? [`${kept.because} ${kept.source}`] : []),
  ];
  return { until, because: because.length === 0 ? null : because.join(' '), holds };
};
