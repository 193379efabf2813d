import { describe, expect, it } from '@jest/globals';
import {
  BARCOL_READINGS,
  judgeBarcol,
  NINETY_PERCENT,
  readingsWanted,
  SAMPLE_SIZE_SOURCE,
  type BarcolRule,
} from '@hull-record/trade';
import fc from 'fast-check';

/** The limit is 36. */
const rule: BarcolRule = { minimum: 40, fraction: 0.9, source: 'data sheet of the resin' };
const side = 'laminate' as const;
const eight36 = [36, 36, 36, 36, 36, 36, 36, 36] as const;

describe('a set of Barcol readings against the minimum of the resin', () => {
  it('is judged without its highest and its lowest, and meets the limit when the rest just reach it', () => {
    expect(judgeBarcol({ values: [60, ...eight36, 20], side }, rule)).toEqual({
      verdict: 'hard enough',
      mean: 36.8,
      trimmedMean: 36,
      counted: 8,
      limit: 36,
      warnings: [],
      source: 'data sheet of the resin',
    });
  });

  it('is too soft when the rest lie below the limit, however little and whatever the mean of all', () => {
    expect(judgeBarcol({ values: [60, 35, ...eight36.slice(1), 20], side }, rule)).toEqual({
      verdict: 'too soft',
      mean: 36.7,
      trimmedMean: 35.875,
      counted: 8,
      limit: 36,
      warnings: [],
      source: 'data sheet of the resin',
    });
  });

  it('drops one highest and one lowest only, also of equal ones', () => {
    expect(judgeBarcol({ values: [50, 50, 30, 30], side }, rule)).toMatchObject({ trimmedMean: 40, counted: 2 });
  });

  it('may have readings at both ends of the scale, and one of zero', () => {
    expect(judgeBarcol({ values: [0, 36, 100], side }, rule)).toMatchObject({
      verdict: 'hard enough',
      trimmedMean: 36,
      counted: 1,
    });
  });

  it('may be held to the end of the scale itself', () => {
    const end = { minimum: 100, fraction: 1, source: 'as given' };
    expect(judgeBarcol({ values: [100, 100, 100], side }, end).verdict).toBe('hard enough');
    expect(judgeBarcol({ values: [99, 99, 100], side }, end).verdict).toBe('too soft');
  });

  it('is judged the same in any order', () => {
    const values = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 3, maxLength: 15 });
    fc.assert(
      fc.property(values, (some) => {
        const sorted = [...some].sort((a, b) => b - a);
        expect(judgeBarcol({ values: sorted, side }, rule)).toEqual(judgeBarcol({ values: some, side }, rule));
      }),
    );
  });

  it('has its trimmed mean between its lowest and highest, and a harder reading never makes it too soft', () => {
    const values = fc.array(fc.integer({ min: 1, max: 99 }), { minLength: 3, maxLength: 15 });
    fc.assert(
      fc.property(values, fc.nat(), (some, pick) => {
        const before = judgeBarcol({ values: some, side }, rule);
        expect(before.trimmedMean).toBeGreaterThanOrEqual(Math.min(...some));
        expect(before.trimmedMean).toBeLessThanOrEqual(Math.max(...some));
        const harder = some.map((value, i) => (i === pick % some.length ? value + 1 : value));
        const after = judgeBarcol({ values: harder, side }, rule);
        expect([before.verdict, after.verdict]).not.toEqual(['hard enough', 'too soft']);
      }),
    );
  });
});

describe('readings that cannot be judged', () => {
  it.each([
    ['a reading below zero', [36, -1, 36], 'A Barcol reading lies between 0 and 100.'],
    ['a reading above the scale', [36, 100.5, 36], 'A Barcol reading lies between 0 and 100.'],
    ['a reading that is no number', [36, NaN, 36], 'A Barcol reading lies between 0 and 100.'],
    ['two readings', [36, 36], '2 readings: the highest and lowest are dropped, so at least 3 are needed.'],
    ['no reading', [], '0 readings: the highest and lowest are dropped, so at least 3 are needed.'],
    ['zeros only', [0, 0, 0], 'All readings are zero: the impressor or the surface is wrong.'],
  ] as const)('%s: neither mean nor verdict, and the reason is said', (_what, values, why) => {
    expect(judgeBarcol({ values, side, temperatureC: 5 }, rule)).toEqual({
      verdict: 'cannot be judged',
      mean: null,
      trimmedMean: null,
      counted: 0,
      limit: 36,
      warnings: [why],
      source: 'data sheet of the resin',
    });
  });

  it.each([0, -40, NaN, 101, Infinity])('a minimum of %d is no minimum', (minimum) => {
    expect(judgeBarcol({ values: [50, 50, 50], side }, { minimum, fraction: 1, source: 'as given' })).toEqual({
      verdict: 'cannot be judged',
      mean: null,
      trimmedMean: null,
      counted: 0,
      limit: minimum,
      warnings: ['The minimum hardness is missing or not between 0 and 100.'],
      source: 'as given',
    });
  });
});

describe('warnings of a set of readings', () => {
  const ten = [40, 40, 40, 40, 40, 40, 40, 40, 40, 40];

  it('ten readings are enough, nine are warned about by the side they are on', () => {
    expect(BARCOL_READINGS).toBe(10);
    expect(judgeBarcol({ values: ten, side: 'gel coat' }, rule).warnings).toEqual([]);
    expect(judgeBarcol({ values: ten.slice(1), side: 'gel coat' }, rule).warnings).toEqual([
      '9 readings on the gel coat: fewer than 10.',
    ]);
  });

  it.each([
    [21.9, ['Taken at 21.9 C, not at about 25 C.']],
    [22, []],
    [25, []],
    [28, []],
    [28.1, ['Taken at 28.1 C, not at about 25 C.']],
    [undefined, []],
  ] as const)('readings at %p C: about 25 C is 22 to 28', (temperatureC, warnings) => {
    expect(judgeBarcol({ values: ten, side, temperatureC }, rule).warnings).toEqual(warnings);
  });

  it.each([
    [1.4, ['1.4 mm thick: less than 1.5 mm.']],
    [1.5, []],
    [undefined, []],
  ] as const)('what is read is 1.5 mm thick at least: %p mm', (thicknessMm, warnings) => {
    expect(judgeBarcol({ values: ten, side, thicknessMm }, rule).warnings).toEqual(warnings);
  });

  it('come together: number, temperature, thickness; none changes the verdict', () => {
    expect(judgeBarcol({ values: [40, 40, 40], side, temperatureC: 12, thicknessMm: 1 }, rule)).toMatchObject({
      verdict: 'hard enough',
      warnings: [
        '3 readings on the laminate: fewer than 10.',
        'Taken at 12 C, not at about 25 C.',
        '1 mm thick: less than 1.5 mm.',
      ],
    });
  });
});

describe('how many readings a hardness wants', () => {
  it('a rule of 90 per cent and a table say that they are from memory', () => {
    expect(NINETY_PERCENT).toEqual({
      fraction: 0.9,
      source: '90 % rule (from memory, confirm against the standard)',
    });
    expect(SAMPLE_SIZE_SOURCE).toBe('ASTM D2583 sample-size table (from memory, confirm against the standard)');
  });

  it.each([
    [29.9, 'reinforced', null],
    [30, 'reinforced', 29],
    [39.9, 'reinforced', 29],
    [40, 'reinforced', 22],
    [50, 'reinforced', 16],
    [60, 'reinforced', 10],
    [69.9, 'reinforced', 10],
    [70, 'reinforced', 5],
    [70.1, 'reinforced', null],
    [NaN, 'reinforced', null],
    [19.9, 'homogeneous', null],
    [20, 'homogeneous', 9],
    [30, 'homogeneous', 8],
    [40, 'homogeneous', 7],
    [55, 'homogeneous', 6],
    [60, 'homogeneous', 5],
    [70, 'homogeneous', 4],
    [80, 'homogeneous', 3],
    [80.1, 'homogeneous', null],
  ] as const)('at %d, %s: %p', (hardness, material, readings) => {
    expect(readingsWanted(hardness, material)).toBe(readings);
  });

  it('what is harder never wants more', () => {
    const hardness = fc.double({ min: 30, max: 70, noNaN: true });
    fc.assert(
      fc.property(hardness, hardness, fc.constantFrom('reinforced' as const, 'homogeneous' as const), (a, b, kind) => {
        const [softer, harder] = [readingsWanted(Math.min(a, b), kind), readingsWanted(Math.max(a, b), kind)];
        expect(softer).toBeGreaterThanOrEqual(harder ?? Infinity);
      }),
    );
  });
});
