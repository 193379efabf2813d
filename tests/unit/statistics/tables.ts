import fc from 'fast-check';
import type { Table } from '@hull-record/statistics';

const cell = (most: number) => fc.nat({ max: most });

/** Tables of small counts. */
export const smallTable = (most: number): fc.Arbitrary<Table> =>
  fc.record({ a: cell(most), b: cell(most), c: cell(most), d: cell(most) });

/** Every way to let so many claims fall on hulls 0 .. total - 1, as the number that falls on the first `exposed`. */
export const everyFall = ({ exposed, claims, total }: { exposed: number; claims: number; total: number }): number[] => {
  const counts: number[] = [];
  for (let set = 0; set < 2 ** total; set += 1) {
    const bits = [...Array(total).keys()].filter((hull) => (set >> hull) & 1);
    if (bits.length === claims) counts.push(bits.filter((hull) => hull < exposed).length);
  }
  return counts;
};
