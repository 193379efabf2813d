import type { Random } from '../random/xoshiro.js';
import type { SuspectClass } from './classes.js';
import { tailChances } from './exact-tail.js';
import type { RiskCells } from './risk-cells.js';
import { tally } from './tally.js';
import { throwClaims } from './throw-claims.js';

/**
 * The smallest p over all classes in each of a number of worlds in which exposure does not matter.
 *
 * In each world the claims of every risk set fall on hulls at risk in it by chance; lots stay in their hulls, so that
 * classes that go together stay together (Westfall and Young 1993). Goes class by class over worlds thrown beforehand,
 * which costs no table of all hulls by all classes.
 */
export const smallestByChance = (
  suspects: readonly SuspectClass[],
  cells: RiskCells,
  { random, worlds }: { random: Random; worlds: number },
): Float64Array => {
  const thrown = throwClaims(cells, random, worlds);
  const smallest = new Float64Array(worlds).fill(1);
  const counts = new Uint32Array(worlds);
  for (const { hulls } of suspects) {
    counts.fill(0);
    let most = 0;
    for (let i = 0; i < hulls.length; i += 1) {
      const hull = hulls[i] as number;
      for (let k = thrown.starts[hull] as number; k < (thrown.starts[hull + 1] as number); k += 1) {
        const world = thrown.worlds[k] as number;
        const count = (counts[world] as number) + 1;
        counts[world] = count;
        if (count > most) most = count;
      }
    }
    if (most === 0) continue;
    const tails = tailChances(tally(hulls, cells).exposed, cells, most);
    for (let world = 0; world < worlds; world += 1)
      smallest[world] = Math.min(smallest[world] as number, tails[counts[world] as number] as number);
  }
  return smallest;
};

/** The p of a class corrected for the largest of all: (1 + worlds with one as small) / (1 + worlds). */
export const adjustedP = (p: number, smallest: Float64Array): number => {
  let asSmall = 0;
  for (let world = 0; world < smallest.length; world += 1)
    if ((smallest[world] as number) <= p * (1 + 1e-9)) asSmall += 1;
  return (1 + asSmall) / (1 + smallest.length);
};
