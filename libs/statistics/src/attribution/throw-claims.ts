import { below } from '../random/draws.js';
import type { Random } from '../random/xoshiro.js';
import type { RiskCells } from './risk-cells.js';

/** Worlds in which each hull has a claim, hull by hull: those of hull h stand from starts[h] to below starts[h + 1]. */
export interface Thrown {
  readonly starts: Uint32Array;
  readonly worlds: Uint32Array;
}

/** Throws the claims of every risk set on hulls at risk in it, so often. */
export const throwClaims = (cells: RiskCells, random: Random, worlds: number): Thrown => {
  const { order, firstOf, throughOf } = hullsByRisk(cells);
  if (cells.before)
    return throwEntered({ ...cells, before: cells.before }, { order, firstOf, throughOf }, random, worlds);
  const all = cells.events.reduce((total, count) => total + count, 0) * worlds;
  const [hulls, inWorld] = [new Uint32Array(all), new Uint32Array(all)];
  let next = 0;
  for (let world = 0; world < worlds; world += 1)
    for (let cell = 0; cell < cells.events.length; cell += 1)
      for (const place of distinct(random, cells.atRisk[cell] as number, cells.events[cell] as number)) {
        hulls[next] = order[(firstOf[cell] as number) + place] as number;
        inWorld[next] = world;
        next += 1;
      }
  return sortedByHull(hulls, inWorld, cells.lastOf.length);
};

/** The same where hulls come to be at risk later: the hulls of a risk set are gathered once, and all worlds drawn of them. */
const throwEntered = (
  cells: RiskCells & { readonly before: Int32Array },
  { order, firstOf, throughOf }: ByRisk,
  random: Random,
  worlds: number,
): Thrown => {
  const all = cells.events.reduce((total, count) => total + count, 0) * worlds;
  const [hulls, inWorld] = [new Uint32Array(all), new Uint32Array(all)];
  let next = 0;
  for (let cell = 0; cell < cells.events.length; cell += 1) {
    const atRisk = order
      .subarray(firstOf[cell], throughOf[cell])
      .filter((hull) => (cells.before[hull] as number) < cell);
    for (let world = 0; world < worlds; world += 1)
      for (const place of distinct(random, atRisk.length, cells.events[cell] as number)) {
        hulls[next] = atRisk[place] as number;
        inWorld[next] = world;
        next += 1;
      }
  }
  return sortedByHull(hulls, inWorld, cells.lastOf.length);
};

/** So many different whole numbers below n. */
const distinct = (random: Random, n: number, count: number): readonly number[] => {
  if (count === 1) return [below(random, n)];
  const found = new Set<number>();
  // Floyd's way: never more draws than numbers wanted, also when all of n are.
  for (let top = n - count; top < n; top += 1) {
    const drawn = below(random, top + 1);
    found.add(found.has(drawn) ? top : drawn);
  }
  return [...found];
};

/** Hulls so ordered that those not yet out of risk in a cell stand together, from firstOf the cell to below throughOf. */
interface ByRisk {
  readonly order: Uint32Array;
  readonly firstOf: Uint32Array;
  readonly throughOf: Uint32Array;
}

const hullsByRisk = ({ lastOf, ends }: RiskCells): ByRisk => {
  const byLast: number[][] = Array.from(ends, () => []);
  lastOf.forEach((cell, hull) => byLast[cell]?.push(hull));
  const order = new Uint32Array(lastOf.length);
  const [firstOf, throughOf] = [new Uint32Array(ends.length), new Uint32Array(ends.length)];
  let first = 0;
  let next = 0;
  for (let cell = ends.length - 1; cell >= 0; cell -= 1) {
    if ((ends[cell] as number) === 1) first = next;
    order.set(byLast[cell] ?? [], next);
    next += byLast[cell]?.length ?? 0;
    firstOf[cell] = first;
    throughOf[cell] = next;
  }
  return { order, firstOf, throughOf };
};

const sortedByHull = (hulls: Uint32Array, worlds: Uint32Array, size: number): Thrown => {
  const starts = new Uint32Array(size + 1);
  for (const hull of hulls) starts[hull + 1] = (starts[hull + 1] as number) + 1;
  for (let hull = 0; hull < size; hull += 1) starts[hull + 1] = (starts[hull + 1] as number) + (starts[hull] as number);
  const next = starts.slice();
  const sorted = new Uint32Array(worlds.length);
  hulls.forEach((hull, i) => {
    sorted[next[hull] as number] = worlds[i] as number;
    next[hull] = (next[hull] as number) + 1;
  });
  return { starts, worlds: sorted };
};
