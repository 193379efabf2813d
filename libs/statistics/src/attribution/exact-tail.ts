import { hypergeometric } from '../tables/hypergeometric.js';
import type { RiskCells } from './risk-cells.js';

/**
 * The chances that at least 0, 1 ... `upTo` exposed hulls have a claim, given all risk sets.
 *
 * The convolution of tables/convolution.ts for the upper tail alone: what reaches `upTo` is gathered in one place and
 * never taken apart. All terms are added, none taken off, so that small chances keep all their digits; and few exposed
 * claims cost little however many claims there are.
 */
export const tailChances = (exposed: Uint32Array, { events, atRisk }: RiskCells, upTo: number): Float64Array => {
  const chances = new Float64Array(upTo + 1);
  chances[0] = 1;
  let reach = 0;
  for (let cell = 0; cell < events.length && upTo > 0; cell += 1) {
    const [n1, d, n] = [exposed[cell] as number, events[cell] as number, atRisk[cell] as number];
    if (n1 === 0) continue;
    reach = Math.min(upTo, reach + Math.min(n1, d));
    if (d === 1) addOne(chances, n1 / n, reach);
    else addSeveral(chances, claimsOf(n1, d, n), reach);
  }
  for (let k = upTo - 1; k >= 0; k -= 1) chances[k] = (chances[k] as number) + (chances[k + 1] as number);
  return chances;
};

const addOne = (chances: Float64Array, p: number, reach: number): void => {
  const last = chances.length - 1;
  if (reach === last) chances[last] = (chances[last] as number) + (chances[last - 1] as number) * p;
  for (let k = Math.min(reach, last - 1); k > 0; k -= 1)
    chances[k] = (chances[k] as number) * (1 - p) + (chances[k - 1] as number) * p;
  if (last > 0) chances[0] = (chances[0] as number) * (1 - p);
};

const addSeveral = (chances: Float64Array, added: ArrayLike<number>, reach: number): void => {
  const last = chances.length - 1;
  for (let k = reach; k >= 0; k -= 1) {
    const from = k === last ? (chances[last] as number) : (chances[k] as number) * (added[0] as number);
    let total = from;
    if (k === last)
      for (let before = 0; before < last; before += 1)
        total += (chances[before] as number) * atLeast(added, last - before);
    else for (let x = 1; x < added.length && x <= k; x += 1) total += (chances[k - x] as number) * (added[x] as number);
    chances[k] = total;
  }
};

/** The chance of at least so many. */
const atLeast = (added: ArrayLike<number>, least: number): number => {
  let total = 0;
  for (let x = added.length - 1; x >= least; x -= 1) total += added[x] as number;
  return total;
};

/** The chances of 0, 1 ... exposed among d claims of n hulls of which n1 are exposed. */
const claimsOf = (n1: number, d: number, n: number): ArrayLike<number> => {
  if (n - n1 < d) {
    const { low, logs } = hypergeometric({ exposed: n1, claims: d, total: n });
    return [...new Array<number>(low).fill(0), ...logs.map(Math.exp)];
  }
  let chance = 1;
  for (let i = 0; i < d; i += 1) chance *= (n - n1 - i) / (n - i);
  return Array.from({ length: Math.min(n1, d) + 1 }, (_, x) => {
    const own = chance;
    chance *= ((n1 - x) * (d - x)) / ((x + 1) * (n - n1 - d + x + 1));
    return own;
  });
};
