import { expect } from '@jest/globals';
import type { ReachedHull } from '@hull-record/contracts';
import { toNumber, walkHullsWith, type HullWith, type WalkFacts } from './walk/index.js';
import type { Shop } from './shop.js';

const FLOOR = 1e-9;

/**
 * A tank's composition is kept cut at the floor, and the next fill is worked out from it: along a chain of fills a
 * source can lose up to this fraction of the mass of what was used.
 */
const CUT = 2e-9;

/** Sums of doubles and exact fractions agree to this, relative. */
const ROUNDING = 1e-9;

/** Every page of the search from a lot to its hulls. */
export const searchHulls = async (shop: Shop, lot: string, query = '', limit = 3): Promise<ReachedHull[]> => {
  const found: ReachedHull[] = [];
  let cursor = '';
  do {
    const { body } = await shop.get(`/api/lots/${lot}/hulls?limit=${limit}${query}${cursor}`);
    const page = body as unknown as { items: ReachedHull[]; next: string | null };
    found.push(...page.items);
    cursor = page.next === null ? '' : `&cursor=${page.next}`;
  } while (cursor !== '');
  return found;
};

/** Compares the search of the service with the walk over the same facts; `numbers` gives the hull number of an id. */
export const compareSearch = async (
  shop: Shop,
  lotId: string,
  facts: WalkFacts,
  numbers: ReadonlyMap<string, string>,
  limit?: number,
): Promise<void> => {
  const walked = walkHullsWith(lotId, facts, { floor: FLOOR / 2 });
  const cut = new Map(walkHullsWith(lotId, facts, { floor: CUT }).map((hull) => [hull.hull, hull]));
  const found = new Map(
    (await searchHulls(shop, lotId, '', limit))
      .filter(({ hull, possibly }) => hull && !possibly)
      .map((hull) => [hull.hull, hull]),
  );
  const used = kgPerHull(facts);
  for (const hull of walked) {
    const least = toNumber((cut.get(hull.hull) as HullWith).placeShareAboveFloor);
    compareHull(found.get(numbers.get(hull.hull) ?? ''), hull, least, used.get(hull.hull) ?? 0);
  }
  const known = new Set(walked.map((hull) => numbers.get(hull.hull)));
  expect([...found.keys()].filter((number) => !known.has(number ?? ''))).toEqual([]);
};

/** Kilograms of everything used in each hull: what the cut is a fraction of. */
const kgPerHull = ({ uses, joins }: WalkFacts): ReadonlyMap<string, number> => {
  const hullOf = new Map(joins.map((join) => [join.part, join.hull]));
  const totals = new Map<string, number>();
  for (const { part, kg } of uses) {
    const hull = hullOf.get(part);
    if (hull) totals.set(hull, (totals.get(hull) ?? 0) + Number(kg));
  }
  return totals;
};

/** The share lies between those that count nothing below twice the floor, and nothing below half of it. */
const compareHull = (found: ReachedHull | undefined, walked: HullWith, leastShare: number, usedKg: number): void => {
  const exact = toNumber(walked.kg);
  const cutKg = CUT * usedKg;
  if (!found) {
    // Only what is near the floor may be missing.
    expect(exact).toBeLessThan(cutKg);
    return;
  }
  expect(Math.abs((found.kg ?? 0) - exact)).toBeLessThanOrEqual(exact * ROUNDING + cutKg);
  const mostShare = toNumber(walked.placeShareAboveFloor);
  const tolerance = mostShare * ROUNDING + cutKg / smallestRoleKg(found);
  expect(found.largestLayerShare).toBeGreaterThanOrEqual(leastShare - tolerance);
  expect(found.largestLayerShare).toBeLessThanOrEqual(mostShare + tolerance);
};

/** Kilograms of like material in the place that has least of it: a share is a fraction of that. */
const smallestRoleKg = ({ parts }: ReachedHull): number =>
  Math.min(...parts.flatMap(({ places }) => places.map(({ kg, share }) => kg / share)));
