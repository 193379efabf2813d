import { describe, expect, it } from '@jest/globals';
import {
  blisterHint,
  blistersPerM2,
  D714_GRADES,
  d714Of,
  formatIso4628,
  ISO_4628_SOURCE,
  iso4628Of,
  NumberInvalid,
  sizeClassOf,
  surveyDoubts,
} from '@hull-record/trade';
import fc from 'fast-check';

const FT_35_M = 35 * 0.3048;
const survey = { hoursAshore: 24, readings: 50, lengthM: 11 };

describe('what speaks against a survey of wetness', () => {
  it.each([
    [{}, []],
    [{ hoursAshore: 23.5 }, ['Read 23.5 h ashore: too early; 24 h at least.']],
    [{ hoursAshore: 0 }, ['Read 0 h ashore: too early; 24 h at least.']],
    [{ readings: 49 }, ['49 readings: practice asks about 50.']],
    [{ readings: 49, lengthM: FT_35_M }, ['49 readings: practice asks about 50.']],
    [{ readings: 0, lengthM: 10 }, []],
    [{ readings: 20, lengthM: 7, areaM2: 20 }, []],
    [{ readings: 20, lengthM: 7, areaM2: 20.1 }, ['20 readings: practice asks about 21.']],
    [{ readings: 49, areaM2: 20 }, ['49 readings: practice asks about 50.']],
    [{ areaM2: 60.2 }, ['50 readings: practice asks about 61.']],
    [
      { hoursAshore: 2, readings: 3 },
      ['Read 2 h ashore: too early; 24 h at least.', '3 readings: practice asks about 50.'],
    ],
  ])('50 readings on 11 m after a day ashore, but %j', (change, doubts) => {
    expect(surveyDoubts({ ...survey, ...change })).toEqual(doubts);
  });

  it.each([
    [{ hoursAshore: -1 }, 'hours ashore is -1; it must be zero or more.'],
    [{ readings: -1 }, 'readings is -1; it must be zero or more.'],
    [{ lengthM: 0 }, 'length is 0; it must be more than zero.'],
    [{ areaM2: 0 }, 'area is 0; it must be more than zero.'],
  ])('%j is no survey', (wrong, message) => {
    expect(() => surveyDoubts({ ...survey, ...wrong })).toThrow(NumberInvalid);
    expect(() => surveyDoubts({ ...survey, ...wrong })).toThrow(expect.objectContaining({ message }));
  });

  it('more hours and more readings never raise a doubt', () => {
    const amount = fc.integer({ min: 0, max: 120 });
    fc.assert(
      fc.property(amount, amount, amount, amount, (hoursAshore, readings, hours, more) => {
        const before = surveyDoubts({ ...survey, areaM2: 70, hoursAshore, readings });
        const after = surveyDoubts({
          ...survey,
          areaM2: 70,
          hoursAshore: hoursAshore + hours,
          readings: readings + more,
        });
        expect(after.length).toBeLessThanOrEqual(before.length);
      }),
    );
  });
});

describe('where a blister may come from', () => {
  it.each([
    [0.5, 'round', 'between coats'],
    [1, 'round', 'between coats'],
    [1.1, 'round', 'below the gel coat'],
    [1, 'irregular', 'below the gel coat'],
    [8, 'irregular', 'below the gel coat'],
  ] as const)('%d mm and %s: %s', (diameter, shape, hint) => {
    expect(blisterHint(diameter, shape)).toBe(hint);
  });

  it('a blister has a diameter', () => {
    expect(() => blisterHint(0, 'round')).toThrow('diameter is 0; it must be more than zero.');
  });
});

describe('blister grades of two standards', () => {
  it('the crosswalk says that it is from memory', () => {
    expect(ISO_4628_SOURCE).toBe('ISO 4628-2 Annex A (from memory, confirm against the standard)');
  });

  it.each([
    [{ size: 10 }, { quantity: 0, size: 0 }],
    [
      { size: 8, frequency: 'F' },
      { quantity: 2, size: 2 },
    ],
    [
      { size: 6, frequency: 'M' },
      { quantity: 3, size: 3 },
    ],
    [
      { size: 4, frequency: 'MD' },
      { quantity: 4, size: 4 },
    ],
    [
      { size: 2, frequency: 'D' },
      { quantity: 5, size: 5 },
    ],
    [
      { size: 2, frequency: 'F' },
      { quantity: 2, size: 5 },
    ],
  ] as const)('%j is %j, and back', (d714, iso) => {
    expect(iso4628Of(d714)).toEqual(iso);
    expect(d714Of(iso)).toEqual(d714);
  });

  it.each(D714_GRADES.map((grade) => [grade]))('no grade is lost on the way there and back: %j', (grade) => {
    expect(d714Of(iso4628Of(grade))).toEqual(grade);
  });

  it.each([[{ quantity: 0, size: 3 }], [{ quantity: 3, size: 0 }]] as const)(
    'blisters without number or without size are no grade: %j',
    (half) => {
      expect(d714Of(half)).toBeUndefined();
    },
  );

  it('a grade is written as quantity and size', () => {
    expect(formatIso4628({ quantity: 2, size: 3 })).toBe('2(S3)');
    expect(formatIso4628({ quantity: 0, size: 0 })).toBe('0(S0)');
  });

  it.each([
    [0.01, 'S3'],
    [0.5, 'S3'],
    [0.51, 'S4'],
    [5, 'S4'],
    [5.01, 'S5'],
  ] as const)('a blister of %d mm is of class %s', (diameter, size) => {
    expect(sizeClassOf(diameter)).toBe(size);
  });

  it.each([
    [() => sizeClassOf(0), 'diameter is 0; it must be more than zero.'],
    [() => blistersPerM2(-1, 2), 'count is -1; it must be zero or more.'],
    [() => blistersPerM2(1, 0), 'area is 0; it must be more than zero.'],
  ])('a number that can be none is refused by name: %#', (wrong, message) => {
    expect(wrong).toThrow(expect.objectContaining({ code: 'number-invalid', message }));
  });

  it('blisters are counted on a square metre', () => {
    expect(blistersPerM2(12, 0.25)).toBe(48);
    expect(blistersPerM2(0, 3)).toBe(0);
  });
});
