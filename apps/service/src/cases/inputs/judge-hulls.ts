import { daysAfter } from '@hull-record/trade';
import type { CaseSettings } from '../settings.js';
import type { JudgedHull, LeftOut } from './case-inputs.js';
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
  /** Some claim that counts was recorded before the settings were frozen. */
  readonly exploratory: boolean;
}

const DAY_MS = 86_400_000;

const dayOf = (date: string): number => Date.parse(date) / DAY_MS;

/** What came to light on the day of the origin did so within it: half a day. */
const ageOf = (origin: number, day: number): number => Math.max(0.5, day - origin);

const UNCLAIMED: readonly ClaimOfHull[] = [];
const NONE: readonly number[] = [];

const agesOf = (claims: readonly ClaimOfHull[], origin: number, last: number): readonly number[] =>
  claims.filter((claim) => !claim.prompted && claim.on <= last).map(({ on }) => ageOf(origin, on));

/**
 * Judges the hulls of a case: one time origin for all, watched until the cut-off less the report lag, one first claim each.
 *
 * A hull whose first claim was prompted is watched until then; one that is scrapped, until that day. Hulls without the
 * origin, or that came to it later, are not at risk, and are counted.
 */
export const judgeHulls = (of: HullsOfCase, settings: CaseSettings, frozenAt: Date): JudgedHulls => {
  const watchedUntil = daysAfter(settings.cutOff, -settings.reportLagDays);
  const end = dayOf(watchedUntil);
  const months = new Months();
  const strata = new Strata(settings);
  const leftOut = { prompted: 0, late: 0, before: 0, withoutOrigin: 0, withoutOriginWithClaim: 0, notLaunched: 0 };
  const [ids, origins]: [string[], number[]] = [[], []];
  const parts: { readonly numbers: number[]; readonly places: number[] } = { numbers: [], places: [] };
  const hulls: JudgedHull[] = [];
  let exploratory = false;
  for (const row of of.hulls) {
    const origin = dayOfLife(row, settings.origin);
    const claims = of.claims.get(row.id) ?? UNCLAIMED;
    const first = claims[0];
    if (origin === null) {
      leftOut.withoutOrigin += 1;
      if (first) leftOut.withoutOriginWithClaim += 1;
      continue;
    }
    if (origin > end) {
      leftOut.notLaunched += 1;
      continue;
    }
    const early = first !== undefined && new Date(first.recordedAt) <= frozenAt;
    if (early && settings.claims === 'recorded after this freeze') {
      leftOut.before += 1;
      continue;
    }
    const late = first !== undefined && first.on > end;
    const prompted = first !== undefined && !late && first.prompted;
    leftOut.late += late ? 1 : 0;
    leftOut.prompted += prompted ? 1 : 0;
    const claimed = first !== undefined && !late && !prompted;
    exploratory ||= claimed && early;
    const last = Math.min(end, prompted ? first.on : Infinity, row.scrapped ?? Infinity);
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
      age,
      claimed,
      until: claimed ? Math.max(until, age) : until,
      claimAges: first === undefined ? NONE : agesOf(claims, origin, last),
    });
  }
  return { ids, origins, parts, hulls, leftOut, watchedUntil, exploratory };
};
