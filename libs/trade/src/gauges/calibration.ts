import { requireCalendarDate } from '../calendar.js';
import { daysAfter } from '../retention/days.js';

/** One check of a gauge on a calendar day of the plant. */
export interface GaugeCheck {
  readonly on: string;
  readonly good: boolean;
}

export type CalibrationState = 'checked' | 'due' | 'failed' | 'never checked';

/**
 * How a gauge stands on a day: by its newest check up to that day, good for `intervalDays` after it, the last included.
 *
 * Days are YYYY-MM-DD; throws NotACalendarDate. ISO 9001:2015 7.1.5.2 asks for checks at intervals and names none.
 */
export const calibrationOn = (checks: readonly GaugeCheck[], on: string, intervalDays: number): CalibrationState => {
  requireCalendarDate(on);
  const newest = newestUpTo(checks, on);
  if (newest === undefined) return 'never checked';
  if (!newest.good) return 'failed';
  return on <= daysAfter(newest.on, intervalDays) ? 'checked' : 'due';
};

/** Readings to question after a bad check: after `after`, up to and including `until`; null: from the first of all. */
export interface RecallWindow {
  readonly after: string | null;
  readonly until: string;
}

/**
 * The window of a bad check: open at the last good check before it, closed at the bad one.
 *
 * ISO 9001:2015 7.1.5.2: when equipment is found unfit, determine whether previous results are affected.
 */
export const recallWindow = (checks: readonly GaugeCheck[], badOn: string): RecallWindow => {
  requireCalendarDate(badOn);
  const good = checks.filter((check) => check.good && requireCalendarDate(check.on) < badOn).map((check) => check.on);
  return { after: good.sort().at(-1) ?? null, until: badOn };
};

/** Whether a reading of a day falls in a recall window; its value stays as it is. */
export const isSuspect = (takenOn: string, { after, until }: RecallWindow): boolean =>
  (after === null || requireCalendarDate(takenOn) > after) && takenOn <= until;

const newestUpTo = (checks: readonly GaugeCheck[], on: string): GaugeCheck | undefined =>
  [...checks]
    .filter((check) => requireCalendarDate(check.on) <= on)
    .sort((a, b) => (a.on < b.on ? -1 : 1))
    .at(-1);
