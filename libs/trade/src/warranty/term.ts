import { daysAfter, yearsAfter } from '../retention/days.js';
import { requireCalendarDate } from '../calendar.js';

/** From which day in the life of a boat a warranty may run. */
export const WARRANTY_STARTS = [
  'warranty registered',
  'sold to first purchaser',
  'at dealer',
  'left the place of manufacture',
] as const;
export type WarrantyStart = (typeof WARRANTY_STARTS)[number];

/** What a warranty covers for so many years, and what part of the cost the builder bears in each of them. */
export interface WarrantyCover {
  /** Kinds of defect; empty: all that no other cover names. */
  readonly kinds: readonly string[];
  readonly years: number;
  /** Per cent in the first year, the second ...; the last goes on to the end. Empty: all of it throughout. */
  readonly bearsPercent: readonly number[];
}

/** Terms of a model and model year as the builder published them. */
export interface WarrantyTerms {
  /** The first of these that the life of the boat has is the start. */
  readonly starts: readonly WarrantyStart[];
  readonly covers: readonly WarrantyCover[];
  /** What becomes of it when the boat goes to another owner. */
  readonly transfer: { readonly carries: boolean; readonly untilYears?: number | undefined };
}

/** A day in the life of a boat, YYYY-MM-DD. */
export interface LifeDay {
  readonly what: string;
  readonly on: string;
}

/** What the terms say of a day; a person decides. `within` is null when they cannot say. */
export interface WarrantyTerm {
  readonly within: boolean | null;
  readonly startsOn: string | null;
  readonly startsWith: WarrantyStart | null;
  /** The last day. */
  readonly endsOn: string | null;
  /** Year of the warranty, from 1. */
  readonly year: number | null;
  readonly bearsPercent: number | null;
  readonly says: readonly string[];
}

const UNKNOWN = { startsOn: null, startsWith: null, endsOn: null, year: null, bearsPercent: null } as const;

/**
 * Whether a defect of one kind, reported on a day, is within the terms: computed and shown, never decided.
 *
 * A year ends on the day before its anniversary. The first transfer within the term ends what does not carry over: never
 * before that day, and never later than the term would have ended without it. Days are those of the
 * plant; throws NotACalendarDate.
 */
export const warrantyTerm = (
  { starts, covers, transfer }: WarrantyTerms,
  life: readonly LifeDay[],
  { kind, reportedOn }: { readonly kind: string; readonly reportedOn: string },
): WarrantyTerm => {
  const reported = requireCalendarDate(reportedOn);
  const cover = covers.find(({ kinds }) => kinds.includes(kind)) ?? covers.find(({ kinds }) => kinds.length === 0);
  if (!cover) return { ...UNKNOWN, within: false, says: [`The terms do not cover ${kind}.`] };
  const startsWith = starts.find((what) => life.some((day) => day.what === what));
  if (!startsWith)
    return { ...UNKNOWN, within: null, says: [`When it began is not on record: ${starts.join(', or ')}.`] };
  const startsOn = first(life, startsWith);
  const fullEnd = daysAfter(yearsAfter(startsOn, cover.years), -1);
  const moved = transferredBetween(life, startsOn, fullEnd);
  const endsOn = moved === null ? fullEnd : endAfterTransfer({ startsOn, moved, fullEnd }, transfer);
  const year = yearOf(startsOn, reported);
  const within = reported >= startsOn && reported <= endsOn;
  return {
    ...{ within, startsOn, startsWith, endsOn, year },
    bearsPercent: within && year !== null ? (cover.bearsPercent[year - 1] ?? cover.bearsPercent.at(-1) ?? 100) : 0,
    says: [
      ...(reported < startsOn ? [`Reported before it began on ${startsOn}.`] : []),
      ...(reported > endsOn ? [`Reported after it ended on ${endsOn}.`] : []),
      ...(moved === null ? [] : [`The boat was transferred on ${moved}: ${wordTransfer(transfer)}`]),
    ],
  };
};

const first = (life: readonly LifeDay[], what: string): string =>
  life
    .filter((day) => day.what === what)
    .map(({ on }) => requireCalendarDate(on))
    .sort()[0] as string;

/** The first transfer while the term ran: the boat was not sold yet before it, and nothing is left to end after it. */
const transferredBetween = (life: readonly LifeDay[], startsOn: string, endsOn: string): string | null => {
  const within = life.filter(({ what, on }) => what === 'transferred' && on >= startsOn && on <= endsOn);
  return within.length === 0 ? null : first(within, 'transferred');
};

interface Moved {
  readonly startsOn: string;
  readonly moved: string;
  readonly fullEnd: string;
}

const endAfterTransfer = (
  { startsOn, moved, fullEnd }: Moved,
  { carries, untilYears }: WarrantyTerms['transfer'],
): string => {
  if (!carries) return moved;
  if (untilYears === undefined) return fullEnd;
  const shortened = daysAfter(yearsAfter(startsOn, untilYears), -1);
  const end = shortened < moved ? moved : shortened;
  return end < fullEnd ? end : fullEnd;
};

const wordTransfer = ({ carries, untilYears }: WarrantyTerms['transfer']): string => {
  if (!carries) return 'the terms end with it.';
  return untilYears === undefined ? 'the terms go on.' : `the terms go on until ${untilYears} years from the start.`;
};

/** The year of the warranty in which a day lies, from 1; null before it began. */
const yearOf = (startsOn: string, day: string): number | null => {
  if (day < startsOn) return null;
  let year = 1;
  while (yearsAfter(startsOn, year) <= day) year += 1;
  return year;
};
