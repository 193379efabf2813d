import { daysAfter } from '@hull-record/trade';
import type { CaseSettings } from '../settings.js';
import { NOTHING_LEFT_OUT, type JudgedHull, type LeftOut } from './case-inputs.js';
import { dayOfLife } from '../../platform/roll/read-roll.js';
import type { ClaimOfHull, HullsOfCase } from './load-hulls.js';
import { Months, Strata } from './strata.js';

/** Short numbers of parts, as far as they have one, and the place of the hull of each. */
export interface PartsOfHulls {
  readonly numbers: readonly number[];
  readonly places: readonly number[];
}

/** Hulls at risk with their ids, in the order of their places, and what was left out. */
export interface JudgedHulls {
  readonly ids: readonly string[];
  /** Days of the time origin, from 1970-01-01. */
  readonly origins: readonly number[];
  readonly parts: PartsOfHulls;
  readonly hulls: readonly JudgedHull[];
  readonly leftOut: LeftOut;
  readonly watchedUntil: string;
  /** The last day on which a claim that counts may have been reported. */
  readonly reportedBy: string;
  /** Some hull with a claim that counts had one on record before the settings were frozen. */
  readonly exploratory: boolean;
}

const DAY_MS = 86_400_000;

const dayOf = (date: string): number => Date.parse(date) / DAY_MS;

/** What came to light on the day of the origin did so within it: half a day. */
const ageOf = (origin: number, day: number): number => Math.max(0.5, day - origin);

const UNCLAIMED: readonly ClaimOfHull[] = [];
const NONE: readonly number[] = [];

const agesOf = (inTime: readonly ClaimOfHull[], origin: number, last: number): readonly number[] =>
  inTime.filter((claim) => !claim.prompted && claim.on <= last).map(({ on }) => ageOf(origin, on));

/** When the settings were frozen, and the days of the plant on which that was and on which the look is. */
export interface Frozen {
  readonly frozenAt: Date;
  readonly frozenOn: string;
  readonly lookedOn: string;
}

/**
 * Judges the hulls of a case: one time origin for all, watched until the cut-off or the day of the look, whichever is sooner,
 * less the report lag; one first claim each. A claim that was reported after the cut-off does not count, whenever it was
 * noticed: from then on people look and remember otherwise.
 *
 * A hull whose first claim was prompted is watched until then; one that a letter reached until it was mailed; one that is
 * scrapped until that day. Hulls without the origin, that came to it later, or whose first claim is older than it, are not
 * at risk, and are counted. Where claims recorded after the freeze alone count, hulls without a claim until then are at risk
 * from the day after it on: before, none could have had a claim that counts.
 */
export const judgeHulls = (of: HullsOfCase, settings: CaseSettings, when: Frozen): JudgedHulls => {
  const cutOff = settings.cutOff < when.lookedOn ? settings.cutOff : when.lookedOn;
  const watchedUntil = daysAfter(cutOff, -settings.reportLagDays);
  const [end, reportedEnd] = [dayOf(watchedUntil), dayOf(cutOff)];
  const begin = settings.claims === 'recorded after this freeze' ? dayOf(when.frozenOn) : -Infinity;
  const months = new Months();
  const strata = new Strata(settings);
  const leftOut = { ...NOTHING_LEFT_OUT };
  const [ids, origins]: [string[], number[]] = [[], []];
  const parts: { readonly numbers: number[]; readonly places: number[] } = { numbers: [], places: [] };
  const hulls: JudgedHull[] = [];
  let exploratory = false;
  for (const row of of.hulls) {
    const origin = dayOfLife(row, settings.origin);
    const claims = of.claims.get(row.id) ?? UNCLAIMED;
    if (origin === null) {
      leftOut.withoutOrigin += 1;
      if (claims.length > 0) leftOut.withoutOriginWithClaim += 1;
      continue;
    }
    if (origin > end) {
      leftOut.notLaunched += 1;
      continue;
    }
    if (claims.some(({ on }) => on < origin)) {
      leftOut.beforeOrigin += 1;
      continue;
    }
    const inTime = claims.filter(({ on, reported }) => on <= end && reported <= reportedEnd);
    const [first] = inTime;
    const prompted = first?.prompted === true;
    const claimed = first !== undefined && !prompted;
    const reached = Math.min(row.scrapped ?? Infinity, of.letters.get(row.id) ?? Infinity);
    const last = Math.min(end, prompted ? first.on : Infinity, reached);
    const early = claims.some(({ recordedAt }) => new Date(recordedAt) <= when.frozenAt);
    const from = Math.max(0, begin - origin);
    const known = begin > -Infinity && (early || claims.some(({ on }) => on <= begin));
    if (known || (begin > -Infinity && Math.max(last, claimed ? first.on : 0) <= Math.max(begin, origin - 1))) {
      leftOut.before += 1;
      continue;
    }
    leftOut.late += claims.length > 0 && !first ? 1 : 0;
    leftOut.prompted += prompted ? 1 : 0;
    exploratory ||= claimed && early;
    const until = ageOf(origin, last);
    const age = claimed ? ageOf(origin, first.on) : until;
    for (const part of row.parts) {
      parts.numbers.push(part);
      parts.places.push(ids.length);
    }
    ids.push(row.id);
    origins.push(origin);
    const built = months.of(row.built);
    hulls.push({
      number: row.number,
      built,
      since: months.of(origin),
      stratum: strata.of(row.model, built),
      from,
      age,
      claimed,
      until: claimed ? Math.max(until, age) : until,
      claimAges: first === undefined ? NONE : agesOf(inTime, origin, Math.max(last, claimed ? first.on : last)),
      running: claims.length === 0 && row.scrapped === null,
    });
  }
  return { ids, origins, parts, hulls, leftOut, watchedUntil, reportedBy: cutOff, exploratory };
};
