import { daysAfter } from '@hull-record/trade';
import type { CaseSettings } from '../settings.js';
import type { JudgedHull, LeftOut } from './case-inputs.js';
import type { HullRow } from './load-hulls.js';

/** Hulls at risk with their ids, in the order of their places, and what was left out. */
export interface JudgedHulls {
  readonly ids: readonly string[];
  readonly origins: readonly string[];
  /** Short numbers of the parts of each, as far as they have one. */
  readonly parts: readonly (readonly number[])[];
  readonly hulls: readonly JudgedHull[];
  readonly leftOut: LeftOut;
  readonly watchedUntil: string;
  /** Some claim that counts was recorded before the settings were frozen. */
  readonly exploratory: boolean;
}

const days = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / 86_400_000;

/** What came to light on the day of the origin did so within it: half a day. */
const ageOf = (origin: string, day: string): number => Math.max(0.5, days(origin, day));

const quarter = (day: string): string => `${day.slice(0, 4)} Q${Math.ceil(Number(day.slice(5, 7)) / 3)}`;

/**
 * Judges the hulls of a case: one time origin for all, watched until the cut-off less the report lag, one first claim each.
 *
 * A hull whose first claim was prompted is watched until then; one that is scrapped, until that day. Hulls without the
 * origin, or that came to it later, are not at risk, and are counted.
 */
export const judgeHulls = (rows: readonly HullRow[], settings: CaseSettings, frozenAt: Date): JudgedHulls => {
  const watchedUntil = daysAfter(settings.cutOff, -settings.reportLagDays);
  const out = { prompted: 0, late: 0, before: 0, withoutOrigin: 0, withoutOriginWithClaim: 0, notLaunched: 0 };
  const kept: { id: string; origin: string; parts: readonly number[]; hull: JudgedHull }[] = [];
  let exploratory = false;
  for (const row of rows) {
    const [first] = row.claims;
    if (row.origin === null) {
      out.withoutOrigin += 1;
      if (first) out.withoutOriginWithClaim += 1;
      continue;
    }
    if (row.origin > watchedUntil) {
      out.notLaunched += 1;
      continue;
    }
    const early = first !== undefined && new Date(first.recordedAt) <= frozenAt;
    if (early && settings.claims === 'recorded after this freeze') {
      out.before += 1;
      continue;
    }
    const late = first !== undefined && first.on > watchedUntil;
    const prompted = first !== undefined && !late && first.prompted;
    out.late += late ? 1 : 0;
    out.prompted += prompted ? 1 : 0;
    const claimed = first !== undefined && !late && !prompted;
    exploratory ||= claimed && early;
    const ends = [watchedUntil, ...(prompted ? [first.on] : []), ...(row.scrapped === null ? [] : [row.scrapped])];
    const last = ends.sort()[0] as string;
    const until = ageOf(row.origin, last);
    const origin = row.origin;
    const counted = row.claims.filter((claim) => !claim.prompted && claim.on <= last);
    kept.push({
      ...{ id: row.id, origin, parts: row.parts },
      hull: {
        ...{ number: row.number, built: row.built.slice(0, 7), since: origin.slice(0, 7) },
        stratum: stratumOf(row, settings),
        age: claimed ? ageOf(origin, first.on) : until,
        ...{ claimed, until: Math.max(until, claimed ? ageOf(origin, first.on) : 0) },
        claimAges: counted.map((claim) => ageOf(origin, claim.on)),
      },
    });
  }
  return {
    ids: kept.map(({ id }) => id),
    origins: kept.map(({ origin }) => origin),
    parts: kept.map(({ parts }) => parts),
    hulls: kept.map(({ hull }) => hull),
    ...{ leftOut: out, watchedUntil, exploratory },
  };
};

const stratumOf = ({ built, model }: HullRow, { strata }: CaseSettings): string =>
  [...(strata.includes('build quarter') ? [quarter(built)] : []), ...(strata.includes('model') ? [model] : [])].join(
    ', ',
  );
