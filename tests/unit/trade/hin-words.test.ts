import { describe, expect, it } from '@jest/globals';
import { decodeHin, encodeHin, euKey, HinNotEncodable, usKey, type HinParts, type ValidHin } from '@hull-record/trade';

const read = (number: string): ValidHin => {
  const reading = decodeHin(number);
  if (!reading.valid) throw new Error(`${number} is not read`);
  return reading;
};

const digit = (position: number, glyph: string, hint = '') => ({
  position,
  message: `Position ${position} must be a digit, not "${glyph}".${hint}`,
});
const serial = (position: number, glyph: string) => ({
  position,
  message: `A serial has digits and letters except I, O and Q (33 CFR 181.25(b)); position ${position} is "${glyph}".`,
});

describe('what is read from a number', () => {
  it.each([
    ['ABC12345L495', { hin: 'ABC12345L495', display: 'ABC12345L495' }],
    ['US-ABC12345L495', { hin: 'ABC12345L495', display: 'US-ABC12345L495' }],
    ['GB-ABC12345L495', { hin: 'GBABC12345L495', display: 'GB-ABC12345L495', country: 'GB' }],
  ])('%s: US in front is shown, any other country is part of it', (typed, forms) => {
    const parts = { mic: 'ABC', serial: '12345', buildYear: 1994, buildMonth: 12, modelYear: 1995 };
    expect(decodeHin(typed)).toStrictEqual({ valid: true, format: 'current', warnings: [], ...parts, ...forms });
  });

  it('a straight-year number has no model year', () => {
    expect(decodeHin('ABC123450183')).toStrictEqual({
      valid: true,
      format: 'straight-year',
      hin: 'ABC123450183',
      display: 'ABC123450183',
      mic: 'ABC',
      serial: '12345',
      buildYear: 1983,
      buildMonth: 1,
      warnings: [],
    });
  });

  it.each([
    ['ABC12345L495', 'ABC12345L495', 'US-ABC-12345'],
    ['US-ABC12345A900', 'ABC12345A900', 'US-ABC-12345'],
    ['GB-ABC12345A900', 'GBABC12345A900', 'GB-ABC-12345'],
  ])('%s is unique as a whole under the US rule, by maker and serial under the EU rule', (typed, us, eu) => {
    expect(usKey(read(typed))).toBe(us);
    expect(euKey(read(typed))).toBe(eu);
  });
});

describe('why a text is no number', () => {
  const noMonthOfM = '"M" in position 9 is no month; the old form with M ends in a month letter A to L.';

  it.each([
    ['ABC12345Z495', [{ position: 9, message: '"Z" is no month: A is January to L December (33 CFR 181.25(c)).' }]],
    ['ABC12345L4X5', [digit(11, 'X')]],
    ['ABC12345L49B', [digit(12, 'B', ' 8 or B?')]],
    ['ABC12345L49X', [digit(12, 'X')]],
    ['ABC12345LB95', [digit(10, 'B')]],
    ['ABC12345LXYB', [digit(10, 'X'), digit(11, 'Y'), digit(12, 'B', ' 8 or B?')]],
    ['ABC123451X83', [digit(10, 'X')]],
    ['ABC1234501X3', [digit(11, 'X')]],
    ['ABC12345018B', [digit(12, 'B', ' 8 or B?')]],
    ['ABC123451383', [{ position: 9, message: 'Month 13 does not exist. Position 9: I or 1?' }]],
    ['ABC123450083', [{ position: 9, message: 'Month 00 does not exist.' }]],
    ['ABC123452083', [{ position: 9, message: 'Month 20 does not exist.' }]],
    ['ABC12345MX4C', [digit(10, 'X')]],
    ['ABC12345M7XC', [digit(11, 'X')]],
    ['ABC12345M748', [{ position: 12, message: `${noMonthOfM} 8 or B?` }]],
    ['ABC12345M74Z', [{ position: 12, message: noMonthOfM }]],
    ['ABC12345MXB1', [digit(10, 'X'), digit(11, 'B'), { position: 12, message: noMonthOfM }]],
    ['A_C12345L495', [{ position: 2, message: '"_" cannot stand in a manufacturer code.' }]],
    ['ABC1234OL495', [serial(8, 'O')]],
    ['ABC_234IL495', [serial(4, '_'), serial(8, 'I')]],
    [
      '_BCQ2345L4X5',
      [{ position: 1, message: '"_" cannot stand in a manufacturer code.' }, serial(4, 'Q'), digit(11, 'X')],
    ],
    [
      'GB-ABC123450183',
      [{ position: 9, message: 'A number with a country in front has a month letter A to L here (ISO 10087).' }],
    ],
    ['ABC', [{ message: 'A HIN has 12 characters, or 14 with a two-letter country in front; this has 3.' }]],
    ['ABC12345L4950', [{ message: 'A HIN has 12 characters, or 14 with a two-letter country in front; this has 13.' }]],
  ])('%s: every problem is said at its position', (typed, problems) => {
    expect(decodeHin(typed)).toEqual({ valid: false, problems });
  });
});

describe('doubts about a number that reads well', () => {
  it.each([
    ['ABC123451172', []],
    ['ABC123451072', ['Build month 1972-10 is before hull identification numbers existed (1 November 1972).']],
    ['ABC123450784', []],
    ['ABC123450884', ['Build month 1984-08 is after this form of number ended (31 July 1984).']],
    ['ABC123451084', ['Build month 1984-10 is after this form of number ended (31 July 1984). Position 9: I or 1?']],
    ['ABC12345M84L', []],
    ['ABC12345M85A', ['Build month 1984-08 is after this form of number ended (31 July 1984).']],
    ['ABC12345M85C', ['Build month 1984-10 is after this form of number ended (31 July 1984).']],
    ['TRZ00042K820', []],
    ['TRZ00042K720', ['Build year 2017 and model year 2020 are 3 years apart; check both.']],
    ['TRZ00042K220', ['Build year 2012 and model year 2020 are 8 years apart; check both.']],
    ['TRZ00042K120', []],
    ['GB-TRZ00042K020', []],
    ['GB-TRZ00042K820', []],
    [
      'GB-TRZ00042K720',
      [
        'Build year 2017 and model year 2020 are 3 years apart; check both.',
        'Year digit 7 and model year 2020 do not fit together: the build year could be 2017 or 2027. ' +
          'Read the number on the boat again.',
      ],
    ],
    ['T2Z00042K820', ['Manufacturer code T2Z has a digit; most are three letters (common practice).']],
  ])('%s: %j', (typed, warnings) => {
    expect(read(typed).warnings).toEqual(warnings);
  });

  it('with a country in front, a build after the model year is doubted: it is the year of putting on the market', () => {
    expect(read('GB-TRZ00042K120').warnings).toEqual([
      expect.stringContaining('Year digit 1 and model year 2020 do not fit together'),
    ]);
  });
});

describe('why parts make no number', () => {
  const TRZ: HinParts = { mic: 'TRZ', serial: '00042', buildYear: 2025, buildMonth: 11, modelYear: 2026 };

  it.each([
    [{ serial: '0O042' }, `TRZ0O042K526: ${serial(5, 'O').message}`],
    [
      { mic: 'T_Z', serial: '0O042' },
      `T_Z0O042K526: "_" cannot stand in a manufacturer code. ${serial(5, 'O').message}`,
    ],
    [{ buildYear: 2028 }, 'TRZ00042K826 would be read as build 2018-11, model year 2026; check the years.'],
    [
      { buildYear: 1883, format: 'straight-year' },
      'TRZ000421183 would be read as build 1983-11, model year not stated; check the years.',
    ],
  ] as const)('%j: the number that would come of it, and what is wrong with it', (wrong, message) => {
    const parts = { ...TRZ, ...wrong };
    expect(() => encodeHin(parts)).toThrow(
      expect.objectContaining({ name: 'HinNotEncodable', code: 'hin-not-encodable', message, data: parts }),
    );
  });

  it.each([{ serial: '0004a' }, { serial: '00-042' }])('a serial is taken only as it is stored: %j', (wrong) => {
    expect(() => encodeHin({ ...TRZ, ...wrong })).toThrow(HinNotEncodable);
  });
});
