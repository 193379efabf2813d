import { describe, expect, it } from '@jest/globals';
import {
  checkBuildDates,
  decodeHin,
  encodeHin,
  euKey,
  isStoredForm,
  nextSerial,
  usKey,
  type HinReading,
  type ValidHin,
} from '@hull-record/trade';
import { publishedCases } from '../support/published-cases.js';

publishedCases('hin');

const CHART = 'format chart of the US Coast Guard as reproduced by boat-alert.com/hin-types.htm';
const FORUM = 'owners explain their own numbers';
const RULE = '33 CFR 181.25';
const EU_RULE = 'Reg. (EU) 2017/1 Art. 3(1)';

const read = (text: string): ValidHin => {
  const reading = decodeHin(text);
  if (!reading.valid) throw new Error(`${text}: ${JSON.stringify(reading.problems)}`);
  return reading;
};

const problemsOf = (reading: HinReading) => (reading.valid ? [] : reading.problems);

const WORKED = [
  ['ABC12345L495', 'current', 1994, 12, 1995, 'newboatbuilders.com/pages/hin.html'],
  ['ABC12345A788', 'current', 1987, 1, 1988, CHART],
  ['ABC12345C585', 'current', 1985, 3, 1985, 'sailboatdata.com forum (last four characters)'],
  ['ABC12345K485', 'current', 1984, 11, 1985, 'sailboatdata.com forum (last four characters)'],
  ['ABC12345A900', 'current', 1999, 1, 2000, `${FORUM}; year derived: nearest to the model year`],
  ['ABC12345H394', 'current', 1993, 8, 1994, "a builder's HIN page (H3 is August 1993)"],
  ['ABC12345I506', 'current', 2005, 9, 2006, `derived from ${RULE}(c): September is I`],
  ['ABC123451275', 'straight-year', 1975, 12, undefined, CHART],
  ['ABC123451272', 'straight-year', 1972, 12, undefined, FORUM],
  ['ABC12345M75A', 'model-year', 1974, 8, 1975, `${CHART}; year derived: the model year starts in August`],
  ['ABC12345M82H', 'model-year', 1982, 3, 1982, 'sailboatdata.com forum'],
  ['ABC12345M73E', 'model-year', 1972, 12, 1973, `${FORUM}; year derived`],
] as const;

describe('hull identification numbers of 33 CFR 181.25 and the forms before it', () => {
  it.each(WORKED)(
    '%s is %s, built %i-%i, model year %s (%s)',
    (text, format, buildYear, buildMonth, modelYear, _source) => {
      const reading = read(text);
      expect(reading).toMatchObject({ hin: text, format, mic: 'ABC', serial: '12345', buildYear, buildMonth });
      expect(reading.modelYear).toBe(modelYear);
      expect(reading.country).toBeUndefined();
      expect(reading.warnings).toEqual([]);
      expect(encodeHin(reading)).toBe(text);
    },
  );

  it('US- may stand before the number and is no part of it (33 CFR 181.27)', () => {
    const reading = read('US-ABC12345L495');
    expect(reading).toMatchObject({ hin: 'ABC12345L495', display: 'US-ABC12345L495', buildYear: 1994, buildMonth: 12 });
    expect(reading).toMatchObject({ format: 'current', serial: '12345', modelYear: 1995 });
    expect(reading.country).toBeUndefined();
  });

  it.each([
    ['A', 8, 1974],
    ['B', 9, 1974],
    ['C', 10, 1974],
    ['D', 11, 1974],
    ['E', 12, 1974],
    ['F', 1, 1975],
    ['G', 2, 1975],
    ['H', 3, 1975],
    ['I', 4, 1975],
    ['J', 5, 1975],
    ['K', 6, 1975],
    ['L', 7, 1975],
  ])('in the old form with M, month letter %s is month %i of %i for model year 1975 (format chart)', (letter, m, y) => {
    expect(read(`ABC12345M75${letter}`)).toMatchObject({ buildMonth: m, buildYear: y, modelYear: 1975 });
  });

  it.each([...'ABCDEFGHIJKL'].map((letter, i) => [letter, i + 1] as const))(
    'in the form in force, month letter %s is month %i (33 CFR 181.25(c))',
    (letter, month) => {
      expect(read(`ABC12345${letter}495`).buildMonth).toBe(month);
    },
  );

  it.each([
    ['72', 1972],
    ['82', 1982],
    ['99', 1999],
    ['00', 2000],
    ['71', 2071],
  ])(
    'model year %s is %i, since numbers start in 1972 (derived from 33 CFR 181.25(d) and the format chart)',
    (yy, y) => {
      expect(read(`ABC12345A${yy.slice(1)}${yy}`).modelYear).toBe(y);
    },
  );
});

describe('texts that are no hull identification number', () => {
  it.each([
    ['ABC1234OL495', 8, 'O in the serial, 33 CFR 181.25(b)'],
    ['ABC1I345L495', 5, 'I in the serial, 33 CFR 181.25(b)'],
    ['ABCQ2345L495', 4, 'Q in the serial, 33 CFR 181.25(b)'],
    ['ABC12345M495', 12, 'M is no month of 181.25(c) and the old form ends in a letter'],
    ['ABC123451375', 9, 'month 13, format chart'],
    ['ABC123450075', 9, 'month 00, format chart'],
    ['ABC12345L4A5', 11, 'model year is two digits, 33 CFR 181.25(d)'],
    ['ABC12345N495', 9, 'December is L, 33 CFR 181.25(c)'],
    ['ABC12345LA95', 10, 'last digit of the year, 33 CFR 181.25(c)'],
  ])('%s is refused at position %i (%s)', (text, position) => {
    expect(problemsOf(decodeHin(text)).map((problem) => problem.position)).toEqual([position]);
  });

  it.each(['ABC12345L49', 'ABC12345L4955'])('%s has not 12 characters (33 CFR 181.25)', (text) => {
    expect(problemsOf(decodeHin(text))).toEqual([{ message: expect.stringContaining(`this has ${text.length}`) }]);
  });

  it('hyphens are read over, but a number is stored uninterrupted by slashes, hyphens, or spaces (33 CFR 181.25)', () => {
    expect(read('ABC-12345-L495').hin).toBe('ABC12345L495');
    expect(isStoredForm('ABC12345L495')).toBe(true);
    expect(isStoredForm('ABC-12345-L495')).toBe(false);
    expect(isStoredForm('ABC 12345 L495')).toBe(false);
    expect(isStoredForm('ABC12345/L495')).toBe(false);
  });

  it('a 1 that should be an I in position 9 is refused with a hint and never repaired (misread named by boat-alert.com)', () => {
    const problems = problemsOf(decodeHin('ABC123451495'));
    expect(problems).toEqual([{ position: 9, message: expect.stringContaining('Position 9: I or 1?') }]);
    expect(problems[0]?.message).toContain('Month 14');
  });

  it.each([
    ['ABC12345L49B', 'misread named by boat-alert.com'],
    ['ABC12345M828', 'misread named by boat-alert.com'],
  ])('%s is refused with the hint "8 or B?" (%s)', (text) => {
    expect(problemsOf(decodeHin(text))).toEqual([{ position: 12, message: expect.stringContaining('8 or B?') }]);
  });
});

describe('doubts that never refuse a number', () => {
  it('a month before 1 November 1972 is before numbers existed (format chart)', () => {
    expect(read('ABC12345M73A')).toMatchObject({ buildYear: 1972, buildMonth: 8 });
    expect(read('ABC12345M73A').warnings).toEqual([expect.stringContaining('1972-08')]);
    expect(read('ABC12345M73C').warnings).toHaveLength(1);
    expect(read('ABC12345M73D').warnings).toEqual([]);
  });

  it('an old form after 31 July 1984 is doubted, and a first digit 1 may be an I (format chart; Arizona R12-4-505)', () => {
    expect(read('ABC123450784').warnings).toEqual([]);
    expect(read('ABC123450884').warnings).toEqual([expect.not.stringContaining('I or 1')]);
    for (const number of ['ABC123451084', 'ABC123451184']) {
      expect(read(number).warnings).toEqual([expect.stringContaining('Position 9: I or 1?')]);
    }
    expect(read('ABC123450984').warnings).toEqual([expect.not.stringContaining('I or 1')]);
  });

  it.each([
    ['ABC12345A497', 1994, 1],
    ['ABC12345A597', 1995, 0],
    ['ABC12345A897', 1998, 0],
    ['ABC12345A997', 1989, 1],
  ])('%s, built %i, has %i warning of a wide gap, since 33 CFR 181.25 limits none (derived)', (text, year, count) => {
    expect(read(text).buildYear).toBe(year);
    expect(read(text).warnings).toHaveLength(count);
  });
});

describe('numbers of ISO 10087 with a country in front', () => {
  it('the published example with 2013 or 1993 beside model year 1999 is read, doubted and not repaired (en.wikipedia.org)', () => {
    const reading = read('GB-ABC00042A399');
    expect(reading).toMatchObject({ country: 'GB', mic: 'ABC', serial: '00042', buildMonth: 1, modelYear: 1999 });
    expect(reading).toMatchObject({ hin: 'GBABC00042A399', display: 'GB-ABC00042A399' });
    expect(reading.buildYear % 10).toBe(3);
    expect(reading.warnings).toContainEqual(expect.stringContaining('do not fit together'));
    expect(encodeHin(reading)).toBe('GBABC00042A399');
  });

  it('14 characters are stored and 15 glyphs displayed (en.wikipedia.org, boat-alert.com)', () => {
    const reading = read('gb abc00042 a900');
    expect(reading.hin).toHaveLength(14);
    expect(reading.display).toHaveLength(15);
    expect(reading.warnings).toEqual([]);
  });

  it(`a build after the year the craft is meant for the market is doubted (derived from ${EU_RULE})`, () => {
    expect(read('GB-ABC00042A099').warnings).toHaveLength(1);
    expect(read('ABC00042A099').warnings).toEqual([]);
    expect(read('GB-ABC00042A799').warnings).toEqual([]);
  });

  it('the forms that ended in 1984 do not go with a country (ISO 10087 has a month letter)', () => {
    expect(problemsOf(decodeHin('GBABC123451275'))).toEqual([expect.objectContaining({ position: 9 })]);
    expect(problemsOf(decodeHin('GBABC12345M82H'))).toEqual([expect.objectContaining({ position: 9 })]);
  });
});

describe('uniqueness', () => {
  it(`one serial in two months is two numbers under 33 CFR 181.23(c) and one under ${EU_RULE}(c) (derived)`, () => {
    const [january, february] = [read('ABC12345A788'), read('ABC12345B788')];
    expect(usKey(january)).not.toBe(usKey(february));
    expect(euKey(january)).toBe(euKey(february));
  });

  it('the same number on two hulls is one key, however it was typed (33 CFR 181.23(c))', () => {
    expect(usKey(read('US-ABC12345A788'))).toBe(usKey(read('abc 12345 a788')));
  });

  it(`another manufacturer or country may use the same serial (${EU_RULE}(c))`, () => {
    expect(euKey(read('ABD12345A788'))).not.toBe(euKey(read('ABC12345A788')));
    expect(euKey(read('GBABC12345A788'))).not.toBe(euKey(read('FRABC12345A788')));
    expect(euKey(read('GBABC12345A788'))).not.toBe(euKey(read('ABC12345A788')));
  });

  it('a gap in serials is no error, since 33 CFR 181.25 asks for no sequence', () => {
    expect(read('ABC12345A788').warnings).toEqual([]);
    expect(read('ABC12347A788').warnings).toEqual([]);
    expect(usKey(read('ABC12345A788'))).not.toBe(usKey(read('ABC12347A788')));
  });

  it('serials are counted without I, O and Q (33 CFR 181.25(b))', () => {
    expect(nextSerial('0000H')).toBe('0000J');
    expect(nextSerial('0000N')).toBe('0000P');
    expect(nextSerial('0000P')).toBe('0000R');
  });
});

describe('build month against the days of the build', () => {
  const december1994 = read('ABC12345L495');

  it.each([
    ['1994-12-01', '1994-12-31', 0],
    ['1994-12-31', '1994-12-31', 0],
    ['1994-10-03', '1995-02-01', 0],
    ['1995-01-01', '1995-02-01', 1],
    ['1994-10-03', '1994-11-30', 1],
  ])('began %s, left %s: %i errors under 33 CFR 181.25(c)', (constructionBegan, leftPlant, count) => {
    const errors = checkBuildDates(december1994, { constructionBegan, leftPlant });
    expect(errors).toHaveLength(count);
    for (const error of errors) expect(error).toContain('33 CFR 181.25(c)');
  });
});
