import type { Judged } from './judged.js';

/**
 * The risk sets of a case: a cell for each age with claims in each stratum, stratum by stratum, ages rising.
 *
 * A hull is at risk in the cells of its stratum up to `lastOf` it. So exposed hulls are counted once, at their last cell,
 * and a sum from the end of the stratum gives how many are at risk in every cell: linear in exposed hulls and cells. A hull
 * that is watched from a later age on is taken off again at `before`, the last cell up to that age.
 */
export interface RiskCells {
  /** Claims in each cell. */
  readonly events: Uint32Array;
  /** Hulls at risk in each cell. */
  readonly atRisk: Uint32Array;
  /** 1 where a cell is the last of its stratum. */
  readonly ends: Uint8Array;
  /** Pooled Nelson-Aalen hazard of the stratum up to and with each cell. */
  readonly hazard: Float64Array;
  /** Age of each cell. */
  readonly ages: Float64Array;
  /** The last cell in which each hull is at risk; -1 when it was watched less than any claim took in its stratum. */
  readonly lastOf: Int32Array;
  /** The last cell in which each hull is not at risk yet; -1 when it is from the first on. Null when all of them are. */
  readonly before: Int32Array | null;
  /** The same and the claim of each hull in one number, 2 (lastOf + 1) + claimed: classes are counted by it, in one read a hull. */
  readonly counted: Int32Array;
}

/** The risk sets of a case. */
export const riskCells = ({ ages, from, claimed, strata }: Judged): RiskCells => {
  const events = eventAges({ ages, claimed, strata });
  const starts = startsOf(events);
  const cellAges = Float64Array.from(events.flat());
  const counts = new Uint32Array(cellAges.length);
  const atRisk = new Uint32Array(cellAges.length);
  const lastOf = new Int32Array(ages.length);
  const counted = new Int32Array(ages.length);
  const before = from ? new Int32Array(ages.length) : null;
  for (let hull = 0; hull < ages.length; hull += 1) {
    const own = events[strata[hull] as number] ?? [];
    const start = starts[strata[hull] as number] as number;
    const cell = cellUpTo(own, start, ages[hull] as number);
    lastOf[hull] = cell;
    if (before && from) {
      const late = (from[hull] as number) === 0 ? -1 : cellUpTo(own, start, from[hull] as number);
      before[hull] = late;
      if (late >= 0) atRisk[late] = (atRisk[late] as number) - 1;
    }
    counted[hull] = 2 * (cell + 1) + (claimed[hull] as number);
    if (cell >= 0) atRisk[cell] = (atRisk[cell] as number) + 1;
    if ((claimed[hull] as number) === 1) counts[cell] = (counts[cell] as number) + 1;
  }
  const ends = new Uint8Array(cellAges.length);
  for (const start of starts) if (start > 0) ends[start - 1] = 1;
  if (ends.length > 0) ends[ends.length - 1] = 1;
  sumFromEnds(atRisk, ends);
  const hazard = hazardOf(counts, atRisk, ends);
  return { events: counts, atRisk, ends, hazard, ages: cellAges, lastOf, before, counted };
};

/** The pooled hazard that a hull was under while it was watched. */
export const hazardOfHull = ({ lastOf, before, hazard }: RiskCells, hull: number): number => {
  const [last, late] = [lastOf[hull] as number, before ? (before[hull] as number) : -1];
  return (last < 0 ? 0 : (hazard[last] as number)) - (late < 0 ? 0 : (hazard[late] as number));
};

/** Turns counts by last cell into counts at risk, in place; what was taken off comes out whole, as numbers go round. */
export const sumFromEnds = (counts: Uint32Array, ends: Uint8Array): void => {
  for (let cell = counts.length - 2; cell >= 0; cell -= 1)
    if ((ends[cell] as number) === 0) counts[cell] = (counts[cell] as number) + (counts[cell + 1] as number);
};

/** Ages with claims of each stratum, rising. */
const eventAges = ({ ages, claimed, strata }: Judged): readonly (readonly number[])[] => {
  const found: Set<number>[] = [];
  for (let hull = 0; hull < ages.length; hull += 1)
    if ((claimed[hull] as number) === 1) (found[strata[hull] as number] ??= new Set()).add(ages[hull] as number);
  return Array.from(found, (own) => [...(own ?? [])].sort((a, b) => a - b));
};

const startsOf = (events: readonly (readonly number[])[]): readonly number[] => {
  let next = 0;
  return events.map((own) => {
    const start = next;
    next += own.length;
    return start;
  });
};

/** The last cell of a stratum up to an age; -1 when it is before all of them. */
const cellUpTo = (own: readonly number[], start: number, age: number): number => {
  const place = lastUpTo(own, age);
  return place < 0 ? -1 : start + place;
};

/** The place of the last of rising ages that is not above an age; -1 when all are. */
const lastUpTo = (ages: readonly number[], age: number): number => {
  let [low, high] = [0, ages.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ages[middle] as number) <= age) low = middle + 1;
    else high = middle;
  }
  return low - 1;
};

const hazardOf = (events: Uint32Array, atRisk: Uint32Array, ends: Uint8Array): Float64Array => {
  let hazard = 0;
  return Float64Array.from(events, (count, cell) => {
    if (cell > 0 && (ends[cell - 1] as number) === 1) hazard = 0;
    hazard += count / (atRisk[cell] as number);
    return hazard;
  });
};
