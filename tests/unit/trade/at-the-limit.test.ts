import { describe, expect, it } from '@jest/globals';
import {
  catalystDose,
  catalystPercentByMass,
  checkRepair,
  daysAfter,
  glassPercent,
  hoursAtLeast,
  ignitionLossPercent,
  isBelow,
  isSurfaceDamage,
  judgeBarcol,
  judgeCatalyst,
  judgeClimate,
  judgeFilmFit,
  judgeFlaw,
  judgeSurfaceMargin,
  judgeThickness,
  longestHoursAtLeast,
  SHOP_WINDOWS,
  surveyDoubts,
  yearsAfter,
} from '@hull-record/trade';

const HOUR = 3_600_000;

describe('a number that is worked out to be its limit', () => {
  it('is not below it, nor above it, by the noise of arithmetic; a thousandth is', () => {
    expect([isBelow(0.1 + 0.2, 0.3), isBelow(0.3, 0.1 + 0.2)]).toEqual([false, false]);
    expect([isBelow(2.999, 3), isBelow(3, 2.999), isBelow(0, 0), isBelow(-1, 0)]).toEqual([true, false, false, true]);
  });

  it.each(Array.from({ length: 60 }, (_, i) => i + 1))(
    'is the end of the catalyst window: 3 %% of %d kg is inside',
    (kg) => {
      const window = { minPercent: 1.2, maxPercent: 3, source: '' };
      const { grams } = catalystDose(kg, 3, 1.1);
      expect(judgeCatalyst(catalystPercentByMass(grams / 1000, kg), window).verdict).toBe('inside');
      expect(judgeCatalyst(catalystPercentByMass((kg * 1.2) / 100, kg), window).verdict).toBe('inside');
      expect(judgeCatalyst(3.000001, window).verdict).toBe('too much');
    },
  );

  it.each([14.1, 15.1, 15.6])(
    'is the drift of a day: 6 C from %d C on are allowed, 6.04 are told as more than 6',
    (from) => {
      const window = { ...SHOP_WINDOWS['class rule'], minC: null };
      const drift = (spread: number) =>
        judgeClimate(
          [
            { at: 0, airC: from, humidityPercent: 50 },
            { at: HOUR, airC: from + spread, humidityPercent: 50 },
          ],
          { startedAt: 0, endedAt: HOUR, sprayed: false },
          window,
        );
      expect(drift(6)).toEqual([]);
      expect(drift(6.04)).toEqual([
        { rule: 'drift', detail: '6.1 C between the coldest and warmest of 24 h; 6 C are allowed.' },
      ]);
    },
  );

  it.each([8, 21, 23, 29, 30])(
    'is the margin over the dew point: a surface 3 C over air of %d C at 100 %% is enough',
    (airC) => {
      const measured = { airC, humidityPercent: 100, surfaceC: airC + 3 };
      expect(judgeSurfaceMargin(measured, '3 C').verdict).toBe('enough');
      expect(judgeSurfaceMargin({ ...measured, surfaceC: airC + 2.999 }, '3 C').verdict).toBe('too small');
    },
  );

  it.each([
    [4.8, 6],
    [2.4, 3],
    [5.6, 7],
  ])('is the thickness: ten points of %d mm are inside of %d mm less 20 %%', (mm, expected) => {
    expect(judgeThickness(Array<number>(10).fill(mm), expected, 0.2).verdict).toBe('inside');
  });

  it('is the thickness itself, with no tolerance at all', () => {
    expect(judgeThickness(Array<number>(10).fill(2.1), 2.1, 0).verdict).toBe('inside');
  });

  it('is the film: ten per cent more than was used pass', () => {
    const made = { areaM2: 1, filmUm: 700, densityKgPerL: 1.1, usedKg: 0.7, lossAllowance: 0 };
    expect(judgeFilmFit(made).verdict).toBe('fits');
    expect(judgeFilmFit({ ...made, filmUm: 700.1 }).verdict).toBe('less used than the film holds');
  });

  it('is the count: 7 inclusions in 7 ft2 are 1 in 1 ft2', () => {
    const flaw = { kind: 'foreign-inclusion', size: 0.5, unit: 'mm' } as const;
    expect(judgeFlaw({ ...flaw, count: { found: 7, areaMm2: 7 * 92_903.04 } }, 'II').verdict).toBe('accepted');
    expect(judgeFlaw({ ...flaw, count: { found: 8, areaMm2: 7 * 92_903.04 } }, 'II').verdict).toBe('rejected');
  });
});

describe('repair and hardness at their limits', () => {
  it('a taper of 26.4 mm in 2.2 mm is 12:1, and a patch of 11 mm is within 10 % of 10 mm', () => {
    expect(checkRepair({ originalMm: 2.2, damageDepthMm: 2.2, taperMm: 26.4, patchMm: 2.2 })).toEqual([]);
    expect(checkRepair({ originalMm: 10, damageDepthMm: 10, taperMm: 120, patchMm: 11 })).toEqual([]);
  });

  it('a trimmed mean of 37.8 is 90 % of 42', () => {
    const values = [0, 37, 37, ...Array<number>(8).fill(38), 100];
    expect(judgeBarcol({ values, side: 'laminate' }, { minimum: 42, fraction: 0.9, source: '' }).verdict).toBe(
      'hard enough',
    );
  });

  it('a boat of 35 ft is a large one: 50 readings are asked', () => {
    expect(surveyDoubts({ hoursAshore: 48, readings: 49, lengthM: 10.668 })).toHaveLength(1);
  });
});

describe('days at the ends of the calendar', () => {
  it('are counted in the first century as in any other', () => {
    expect(yearsAfter('0050-01-01', 1)).toBe('0051-01-01');
    expect(daysAfter('0001-01-01', -1)).toBe('0000-12-31');
  });

  it('beyond the year 9999 are refused', () => {
    expect(() => daysAfter('9999-12-31', 1)).toThrow('in the years 0 to 9999');
    expect(() => daysAfter('2026-01-01', 1e9)).toThrow('in the years 0 to 9999');
    expect(() => yearsAfter('2026-01-01', 8_000)).toThrow('in the years 0 to 9999');
  });
});

describe('what is no number', () => {
  it.each([Number.NaN, 0, -5])('as the area of a count (%d) leaves nothing to be judged', (areaMm2) => {
    const flaw = { kind: 'air-bubble', size: 1, unit: 'mm', count: { found: 50, areaMm2 } } as const;
    expect(judgeFlaw(flaw, 'II')).toMatchObject({ verdict: 'cannot be judged', limit: null });
  });

  it('is refused in a climate log, whatever the window asks', () => {
    const log = [{ at: 0, airC: Number.NaN, humidityPercent: Number.NaN }];
    const work = { startedAt: 0, endedAt: HOUR, sprayed: false };
    expect(() => judgeClimate(log, work, SHOP_WINDOWS['recommended workshop'])).toThrow('Relative humidity is NaN');
    expect(() => hoursAtLeast([], Number.NaN, 0)).toThrow('temperature is NaN');
    expect(() => longestHoursAtLeast([], 18, 0)).toThrow('gap is 0');
  });

  it('or cannot be, is refused of a burn-off: more glass than residue, a crucible below nothing', () => {
    const masses = { crucibleG: 20, withSpecimenG: 28, withResidueG: 21 };
    expect(() => glassPercent(masses, 'B', 5)).toThrow('glass is 5; it must be at most the residue, 1 g.');
    expect(glassPercent(masses, 'B', 1)).toBe(12.5);
    expect(() => ignitionLossPercent({ ...masses, crucibleG: -20 })).toThrow('crucible is -20');
  });

  it('is refused of a depth: nothing is less than nothing deep', () => {
    expect(() => isSurfaceDamage(-3, 'mm')).toThrow('depth is -3');
  });
});
