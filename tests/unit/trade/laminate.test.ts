import { describe, expect, it } from '@jest/globals';
import {
  glassAgainstSchedule,
  glassPercent,
  ignitionLossPercent,
  judgeThickness,
  NumberInvalid,
  StackEmpty,
  stackOf,
  THICKNESS_POINTS,
  TradeError,
  type Ply,
} from '@hull-record/trade';
import fc from 'fast-check';

const ten = (mm: number): readonly number[] => Array<number>(10).fill(mm);

describe('thickness of a zone against its schedule', () => {
  it('ten points are asked', () => {
    expect(THICKNESS_POINTS).toBe(10);
  });

  it.each([
    ['all as expected', ten(4), 'inside', 4, []],
    ['all on the lower limit', ten(3), 'inside', 3, []],
    ['all on the upper limit', ten(5), 'inside', 5, []],
    ['all over the upper limit', ten(5.5), 'thick', 5.5, []],
    ['one over, the mean not', [6, ...ten(4).slice(1)], 'inside', 4.2, []],
    ['one thin, the mean not', [4, 2.9, ...ten(4).slice(2)], 'thin', 3.89, [1]],
    ['two thin, the mean thick', [2, ...ten(8).slice(2), 2.5], 'thin', 6.85, [0, 9]],
  ] as const)('4 mm with a quarter to either side: %s is %s', (_, points, verdict, mean, thinPoints) => {
    expect(judgeThickness(points, 4, 0.25)).toEqual({
      verdict,
      meanMm: expect.closeTo(mean, 12),
      points: 10,
      thinPoints,
      warnings: [],
    });
  });

  it('without tolerance only the thickness itself is inside', () => {
    expect(judgeThickness(ten(4), 4, 0).verdict).toBe('inside');
    expect(judgeThickness(ten(4.01), 4, 0).verdict).toBe('thick');
    expect(judgeThickness(ten(3.99), 4, 0).verdict).toBe('thin');
  });

  it.each([
    [1, ['1 points; at least 10 are asked.']],
    [9, ['9 points; at least 10 are asked.']],
    [10, []],
    [11, []],
  ])('%d points: fewer than ten are judged all the same, with a warning', (points, warnings) => {
    expect(judgeThickness(Array<number>(points).fill(4), 4, 0.25)).toEqual({
      verdict: 'inside',
      meanMm: 4,
      points,
      thinPoints: [],
      warnings,
    });
  });

  it.each([
    ['no point', [], 4, 0.1],
    ['a point of zero', [4, 0], 4, 0.1],
    ['a point below zero', [4, -4], 4, 0.1],
    ['a point that is no number', [4, NaN], 4, 0.1],
    ['a point without end', [4, Infinity], 4, 0.1],
    ['nothing expected', [4, 4], 0, 0.1],
    ['less than nothing expected', [4, 4], -4, 0.1],
    ['an expectation that is no number', [4, 4], NaN, 0.1],
    ['an expectation without end', [4, 4], Infinity, 0.1],
    ['a tolerance below zero', [4, 4], 4, -0.1],
    ['a tolerance that is no number', [4, 4], 4, NaN],
    ['a tolerance without end', [4, 4], 4, Infinity],
  ] as const)('cannot be judged from %s', (_, points, expected, tolerance) => {
    expect(judgeThickness(points, expected, tolerance)).toEqual({
      verdict: 'cannot be judged',
      meanMm: null,
      points: points.length,
      thinPoints: [],
      warnings: [],
    });
  });

  it('is thin exactly when it names thin points, and each of them is under the limit', () => {
    const points = fc.array(fc.integer({ min: 1, max: 80 }), { minLength: 1, maxLength: 15 });
    fc.assert(
      fc.property(points, fc.integer({ min: 2, max: 40 }), (tenths, expected) => {
        const judged = judgeThickness(tenths, expected, 0.5);
        expect(judged.verdict === 'thin').toBe(judged.thinPoints.length > 0);
        expect(judged.thinPoints.every((i) => (tenths[i] ?? NaN) * 2 < expected)).toBe(true);
        expect(judged.thinPoints).toHaveLength(tenths.filter((mm) => mm * 2 < expected).length);
      }),
    );
  });
});

describe('glass used against the schedule', () => {
  it.each([
    [9.45, 10, 0.9, 0.05],
    [9, 10, 0.9, 0],
    [4.5, 10, 0.9, -0.5],
    [0, 10, 0.9, -1],
  ])('%d kg on %d m2, where %d kg/m2 are scheduled, are %d more', (used, area, scheduled, more) => {
    expect(glassAgainstSchedule(used, area, scheduled)).toBeCloseTo(more, 12);
  });

  it.each([
    [-1, 10, 0.9],
    [9, 0, 0.9],
    [9, -10, 0.9],
    [9, 10, 0],
    [9, 10, -0.9],
    [NaN, 10, 0.9],
    [Infinity, 10, 0.9],
    [9, NaN, 0.9],
    [9, Infinity, 0.9],
    [9, 10, NaN],
    [9, 10, Infinity],
  ])('nothing is said of %d kg on %d m2 with %d kg/m2 scheduled', (used, area, scheduled) => {
    expect(glassAgainstSchedule(used, area, scheduled)).toBeNull();
  });
});

describe('burn-off', () => {
  const beyond = (residue: number): string => `residue is ${residue}; it must be between 0 and the specimen, 8 g.`;
  const masses = { crucibleG: 20, withSpecimenG: 28, withResidueG: 22 };

  it('the glass is what is left of the specimen by method A, and what was weighed apart by method B', () => {
    expect(glassPercent(masses, 'A')).toBe(25);
    expect(glassPercent(masses, 'A', 1)).toBe(25);
    expect(glassPercent(masses, 'B', 1)).toBe(12.5);
    expect(ignitionLossPercent(masses)).toBe(75);
  });

  it('a specimen may burn to nothing or not at all', () => {
    expect(glassPercent({ ...masses, withResidueG: 20 }, 'A')).toBe(0);
    expect(glassPercent({ ...masses, withResidueG: 28 }, 'A')).toBe(100);
    expect(ignitionLossPercent({ ...masses, withResidueG: 28 })).toBe(0);
    expect(ignitionLossPercent({ ...masses, withResidueG: 20 })).toBe(100);
  });

  it.each([
    ['a crucible of no mass', { ...masses, crucibleG: 0 }, 'crucible is 0; it must be more than zero.'],
    ['no specimen', { ...masses, withSpecimenG: 20 }, 'specimen is 0; it must be more than zero.'],
    ['no residue', { ...masses, withResidueG: NaN }, 'residue is NaN; it must be a finite number.'],
    ['less than the crucible', { ...masses, withResidueG: 19 }, beyond(-1)],
    ['more than the specimen', { ...masses, withResidueG: 29 }, beyond(9)],
  ])('no glass content follows from %s', (_, wrong, message) => {
    expect(() => glassPercent(wrong, 'A')).toThrow(expect.objectContaining({ code: 'number-invalid', message }));
  });

  it('method B asks for the glass', () => {
    expect(() => glassPercent(masses, 'B')).toThrow(new NumberInvalid('glass', NaN, 'a finite number'));
  });

  it.each([
    ['no specimen', { ...masses, withSpecimenG: 20 }, 'specimen is 0; it must be more than zero.'],
    ['a residue heavier than the specimen', { ...masses, withResidueG: 29 }, beyond(-1)],
    ['a residue lighter than the crucible', { ...masses, withResidueG: 19 }, beyond(9)],
  ])('no ignition loss follows from %s', (_, wrong, message) => {
    expect(() => ignitionLossPercent(wrong)).toThrow(expect.objectContaining({ code: 'number-invalid', message }));
  });

  it('what is left and what burned are the whole specimen, and more residue is more glass', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 5, max: 60, noNaN: true }), part, part, (crucibleG, one, other) => {
        const burned = (left: number) => ({
          crucibleG,
          withSpecimenG: crucibleG + 8,
          withResidueG: crucibleG + 7.9 * left,
        });
        expect(glassPercent(burned(one), 'A') + ignitionLossPercent(burned(one))).toBeCloseTo(100, 9);
        const [less, more] = [Math.min(one, other), Math.max(one, other)];
        expect(glassPercent(burned(less), 'A')).toBeLessThanOrEqual(glassPercent(burned(more), 'A'));
      }),
    );
  });
});

describe('a stack of plies', () => {
  const mat = { arealMassKgPerM2: 0.6, fibreMassFraction: 0.25 };
  const roving = { arealMassKgPerM2: 0.8, fibreMassFraction: 0.5 };

  it('adds up thickness, glass and resin', () => {
    // With densities 2 and 1: 0.3 + 1.8 mm and 0.4 + 0.8 mm.
    expect(stackOf([mat, roving], { fibre: 2, resin: 1 })).toEqual({
      thicknessMm: expect.closeTo(3.3, 12),
      glassKgPerM2: expect.closeTo(1.4, 12),
      resinKgPerM2: expect.closeTo(2.6, 12),
      massKgPerM2: expect.closeTo(4, 12),
      fibreMassFraction: expect.closeTo(0.35, 12),
    });
  });

  it('is of glass and polyester unless told otherwise: 0.8 kg/m2 of glass and as much resin are 0.979 mm', () => {
    expect(stackOf([roving]).thicknessMm).toBeCloseTo(0.3125 + 0.8 / 1.2, 12);
  });

  it('without plies is no laminate', () => {
    const none = { code: 'stack-empty', name: 'StackEmpty', message: 'Name at least one ply.', data: {} };
    expect(() => stackOf([])).toThrow(expect.objectContaining(none));
    expect(() => stackOf([])).toThrow(StackEmpty);
    expect(() => stackOf([])).toThrow(TradeError);
  });

  const ply = fc.record({
    arealMassKgPerM2: fc.double({ min: 0.05, max: 3, noNaN: true }),
    fibreMassFraction: fc.double({ min: 0.15, max: 0.75, noNaN: true }),
  });
  const plies = fc.array(ply, { minLength: 1, maxLength: 8 });

  it('on another is as thick and as heavy as both, whichever lies below, and its fibre fraction between theirs', () => {
    fc.assert(
      fc.property(plies, plies, (below: readonly Ply[], above: readonly Ply[]) => {
        const [one, other] = [stackOf(below), stackOf(above)];
        const [both, turned] = [stackOf([...below, ...above]), stackOf([...above, ...below])];
        for (const sum of ['thicknessMm', 'glassKgPerM2', 'resinKgPerM2', 'massKgPerM2'] as const) {
          expect(both[sum]).toBeCloseTo(one[sum] + other[sum], 9);
          expect(turned[sum]).toBeCloseTo(both[sum], 9);
        }
        const fractions = [one.fibreMassFraction, other.fibreMassFraction];
        expect(both.fibreMassFraction).toBeGreaterThanOrEqual(Math.min(...fractions) - 1e-12);
        expect(both.fibreMassFraction).toBeLessThanOrEqual(Math.max(...fractions) + 1e-12);
      }),
    );
  });
});
