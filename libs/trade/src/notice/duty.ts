import { followUpDue, noticeDue } from '../retention/look-back.js';

/** What may be decided about the duty to notify (46 USC 4310(b)). Nothing is decided by default. */
export const DUTY_DECISIONS = ['none', 'fails a rule', 'substantial risk of injury'] as const;
export type DutyDecision = (typeof DUTY_DECISIONS)[number];

/** Classes of mail for a notice: the first two are those of 46 USC 4310(c)(1)(A), the third is for dealers, in writing. */
export const MAILING_CLASSES = ['first-class mail', 'certified mail', 'more expeditious, in writing'] as const;
export type MailingClass = (typeof MAILING_CLASSES)[number];

/** Who is told. */
export const RECIPIENT_KINDS = ['dealer', 'first purchaser', 'later owner'] as const;
export type RecipientKind = (typeof RECIPIENT_KINDS)[number];

/** Whether a class of mail will do: purchasers by first-class or certified mail, dealers by the same or faster, in writing. */
export const mayGoBy = (to: RecipientKind, by: MailingClass): boolean =>
  to === 'dealer' || by !== 'more expeditious, in writing';

/** One date that the law sets, with what it runs from. Days are YYYY-MM-DD in the plant's calendar. */
export interface DueDate {
  readonly what: 'notice' | 'initial report' | 'follow-up report';
  /** null: it does not run yet. */
  readonly dueOn: string | null;
  readonly doneOn: string | null;
  readonly state: 'does not run' | 'due' | 'late' | 'done in time' | 'done late';
  /** Days until it is due, negative when it is over; null when it does not run. */
  readonly days: number | null;
  readonly source: string;
}

/** What dates are worked out from; days are YYYY-MM-DD. */
export interface DutyFacts {
  /** The day of discovery as decided; null: no duty was decided, so that nothing runs. */
  readonly discoveredOn: string | null;
  /** The day on which the last of the recipients was written to; null while somebody was not. */
  readonly notifiedOn: string | null;
  readonly initialReportOn: string | null;
  readonly followUpOn: string | null;
}

const DAY_MS = 86_400_000;

/** Whole days from one calendar day to another. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);

const dueDate = (
  what: DueDate['what'],
  dueOn: string | null,
  doneOn: string | null,
  today: string,
  source: string,
): DueDate => {
  if (dueOn === null) return { what, dueOn, doneOn, state: 'does not run', days: null, source };
  const state = doneOn === null ? (today > dueOn ? 'late' : 'due') : doneOn > dueOn ? 'done late' : 'done in time';
  return { what, dueOn, doneOn, state, days: daysBetween(today, dueOn), source };
};

/**
 * The dates of a notice: within 30 days of discovery (33 CFR 179.05), the initial report concurrently (179.13), the
 * follow-up within 60 days of the initial report (179.15(a)).
 *
 * They run from a recorded decision alone. Throws NotACalendarDate.
 */
export const noticeDates = (facts: DutyFacts, today: string): readonly DueDate[] => {
  const { discoveredOn, notifiedOn, initialReportOn, followUpOn } = facts;
  const due = discoveredOn === null ? null : noticeDue(discoveredOn);
  // With the notice, and so on the day on which it was given when that is sooner.
  const reportDue = due !== null && notifiedOn !== null && notifiedOn < due ? notifiedOn : due;
  // Only what was reported starts the second clock: a report that is owed has no day to count from.
  const again = discoveredOn === null || initialReportOn === null ? null : followUpDue(initialReportOn);
  return [
    dueDate('notice', due, notifiedOn, today, '33 CFR 179.05'),
    dueDate('initial report', reportDue, initialReportOn, today, '33 CFR 179.13, concurrently with the notice'),
    dueDate('follow-up report', again, followUpOn, today, '33 CFR 179.15(a)'),
  ];
};

/** A day from which somebody might argue that the builder knew. */
export interface ArguableDay {
  readonly on: string;
  readonly what: string;
}

/** The earliest of them, which is shown beside the day of discovery; null when there is none. */
export const earliestArguable = (days: readonly ArguableDay[]): ArguableDay | null =>
  days.reduce<ArguableDay | null>((first, each) => (first === null || each.on < first.on ? each : first), null);
