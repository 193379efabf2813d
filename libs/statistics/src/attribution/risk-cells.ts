import type { Judged } from './judged.js';

/**
 * The risk sets of a case: a cell for each age with claims in each stratum, stratum by stratum, ages rising.
 *
 * A hull is at risk in the cells of its stratum up to `lastOf` it. So exposed hulls are counted once, at their last cell,
 * and a sum from the end of the stratum gives how many are at risk in every cell: linear in exposed hulls and cells.
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
  /** The same and the claim of each hull in one number, 2 (lastOf + 1) + claimed: classes are counted by it, in one read a hull. */
  readonly counted: Int32Array;
}

/** The risk sets of a case. */
export const riskCells = ({ ages, claimed, strata }: Judged): RiskCells => {
  const events = eventAges({ ages, claimed, strata });
  const starts = startsOf(events);
  const cellAges = Float64Array.from(events.flat());
  const counts = new Uint32Array(cellAges.length);
  const atRisk = new Uint32Array(cellAges.length);
  const lastOf = new Int32Array(ages.length);
  const counted = new Int32Array(ages.length);
  for (let hull = 0; hull < ages.length; hull += 1) {
    const own = events[strata[hull] as number] ?? [];
    const upTo = lastUpTo(own, ages[hull] as number);
    const cell = upTo < 0 ? -1 : (starts[strata[hull] as number] as number) + upTo;
    lastOf[hull] = cell;
    counted[hull] = 2 * (cell + 1) + (claimed[hull] as number);
    if (cell >= 0) atRisk[cell] = (atRisk[cell] as number) + 1;
    if ((claimed[hull] as number) === 1) counts[cell] = (counts[cell] as number) + 1;
  }
  const ends = new Uint8Array(cellAges.length);
  for (const start of starts) if (start > 0) ends[start - 1] = 1;
  if (ends.length > 0) ends[ends.length - 1] = 1;
  sumFromEnds(atRisk, ends);
  return { events: counts, atRisk, ends, hazard: hazardOf(counts, atRisk, ends), ages: cellAges, lastOf, counted };
};

/** Turns counts by last cell into counts at risk, in place. */
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
