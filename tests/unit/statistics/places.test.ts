import { describe, expect, it } from '@jest/globals';
import { clarkEvans, InputInvalid, quadratTest, scan, seeded, TooLittle } from '@hull-record/statistics';

/** A hull map of 12 stations by 4 strakes; hulls affected are in the forward bottom when planted. */
const zones = (planted: number) =>
  Array.from({ length: 48 }, (_, i) => ({
    name: `zone ${i}`,
    x: i % 12,
    y: Math.floor(i / 12),
    population: 20,
    cases: 1 + (i % 12 < 3 && i < 24 ? planted : 0),
  }));

describe('the scan of the hull map', () => {
  it('finds a planted cluster, with every zone of it', () => {
    const found = scan(zones(4), { random: seeded(1) });
    expect(found?.zones).toEqual(expect.arrayContaining(['zone 0', 'zone 1', 'zone 12', 'zone 13']));
    expect(found?.p).toBe(0.001);
    expect(found?.cases).toBeGreaterThan(2 * (found?.expected ?? NaN));
  });

  it('is the same for a seed, and says nothing of what is even', () => {
    const even = zones(0);
    expect(scan(even, { random: seeded(2) })).toEqual(scan(even, { random: seeded(2) }));
    expect(scan(even, { random: seeded(2) })?.p).toBeGreaterThan(0.5);
    expect(
      scan(
        even.map((zone) => ({ ...zone, cases: 0 })),
        { random: seeded(2) },
      ),
    ).toBeNull();
  });

  it('gives p at most 0.1 to about a tenth of maps without a cluster', () => {
    const random = seeded(9);
    const small = zones(0).slice(0, 12);
    const found = Array.from({ length: 120 }, () => {
      const thrown = small.map((zone) => ({ ...zone, cases: 0 }));
      for (let i = 0; i < 15; i += 1) (thrown[random() % 12] as { cases: number }).cases += 1;
      return scan(thrown, { random, simulations: 99 })?.p ?? 1;
    });
    // 12 expected, standard deviation 3.3; ties make it somewhat fewer.
    expect(found.filter((p) => p <= 0.1).length).toBeLessThanOrEqual(22);
    expect(found.filter((p) => p <= 0.5).length).toBeGreaterThanOrEqual(35);
  });

  it('takes no window of more than half of the population: what is nearly everywhere is no cluster', () => {
    // Cases in all zones but one: the whole but that zone would be the most striking window.
    const most = zones(0).map((zone, i) => ({ ...zone, cases: i === 47 ? 0 : 5 }));
    expect(scan(most, { random: seeded(1), simulations: 9 })?.zones.length).toBeLessThanOrEqual(24);
  });

  it('refuses cases where nothing was inspected', () => {
    const uninspected = zones(1).map((zone, i) => (i === 0 ? { ...zone, population: 0 } : zone));
    expect(() => scan(uninspected, { random: seeded(1) })).toThrow(InputInvalid);
    expect(() => scan([], { random: seeded(1) })).toThrow(InputInvalid);
  });
});

describe('evenness', () => {
  it('of a square lattice is as spaced as 2 (Clark and Evans 1954: 2.149 for a hexagonal one at the most)', () => {
    const lattice = Array.from({ length: 400 }, (_, i) => ({ x: i % 20, y: Math.floor(i / 20) }));
    expect(clarkEvans(lattice, 400)).toBeCloseTo(2, 12);
    expect(
      clarkEvans(
        lattice.map(({ x, y }) => ({ x: x * 3, y: y * 3 })),
        3600,
      ),
    ).toBeCloseTo(2, 12);
    expect(() => clarkEvans([{ x: 0, y: 0 }], 1)).toThrow(TooLittle);
  });

  it('of equal counts has a chi-square of nothing', () => {
    expect(quadratTest([4, 4, 4])).toMatchObject({ chiSquare: 0, degrees: 2, pUpper: 1, pTwoSided: 0 });
    expect(() => quadratTest([1])).toThrow(TooLittle);
  });
});
