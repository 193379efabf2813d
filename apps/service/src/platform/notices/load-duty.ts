import type { EntityManager } from 'typeorm';
import type { DutyView } from '@hull-record/contracts';
import { noticeDates, type ArguableDay, type DueDate } from '@hull-record/trade';
import type { HeldHulls } from '../holds/load-held-hulls.js';
import { ARGUABLE, DECISIONS, dayIn, NOTICES } from './duty.sql.js';
import type { NoticeState } from './load-notice-state.js';

export type Decision = DutyView['decisions'][number];

/** What is said wherever dates or drafts of a notice stand. */
export const WHO_DECIDES =
  "The record computes dates and drafts papers. Whether there is a duty to notify, and what a notice says, is decided by the builder's responsible person with counsel.";

/** The duty to notify as it was decided for a hold, with the days beside it. */
export interface Duty {
  readonly decisions: readonly Decision[];
  /** The day from which dates run; null while no duty is decided. */
  readonly discoveredOn: string | null;
  readonly arguable: readonly ArguableDay[];
  readonly notices: DutyView['notices'];
  readonly today: string;
}

/** Loads it. */
export const loadDuty = async (tx: EntityManager, holdId: string, { rows }: HeldHulls): Promise<Duty> => {
  const decisions = await tx.query<Decision[]>(DECISIONS, [holdId]);
  const hulls = rows.flatMap(({ hullId, reached }) => (hullId !== null && reached ? [hullId] : []));
  const last = decisions.at(-1);
  const [{ today }] = await tx.query<[{ today: string }]>(
    `select ${dayIn('now()', 'h.plant_id')} as today from fact.hold h where h.id = $1`,
    [holdId],
  );
  return {
    decisions,
    discoveredOn: last === undefined || last.decision === 'none' ? null : last.discoveredOn,
    arguable: await tx.query<ArguableDay[]>(ARGUABLE, [holdId, hulls]),
    notices: await tx.query<DutyView['notices']>(NOTICES, [holdId]),
    today,
  };
};

/** The dates of a notice; without one, those that run from the decision. */
export const datesOf = ({ discoveredOn, today }: Duty, state: NoticeState | null): readonly DueDate[] =>
  noticeDates(
    {
      discoveredOn,
      notifiedOn: state?.notifiedOn ?? null,
      initialReportOn: state?.reports.find(({ what }) => what === 'initial')?.sentOn ?? null,
      followUpOn: state?.reports.find(({ what }) => what === 'follow-up')?.sentOn ?? null,
    },
    today,
  );
