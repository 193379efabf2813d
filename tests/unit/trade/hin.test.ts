import { describe, expect, it } from '@jest/globals';
import {
  checkBuildDates,
  decodeHin,
  encodeHin,
  HinNotEncodable,
  isSerial,
  isStoredForm,
  NotACalendarDate,
  nextSerial,
  normaliseNumber,
  SERIAL_ALPHABET,
  SerialInvalid,
  SerialsExhausted,
  type HinParts,
  type ValidHin,
} from '@hull-record/trade';
import fc from 'fast-check';

const letter = fc.constantFrom(...'ABCDEFGHIJKLMNOPQRSTUVWXYZ');
const text = (glyph: fc.Arbitrary<string>, length: number) =>
  fc.array(glyph, { minLength: length, maxLength: length }).map((glyphs) => glyphs.join(''));
const mic = text(letter, 3);
const serial = text(fc.constantFrom(...SERIAL_ALPHABET), 5);
const buildMonth = fc.integer({ min: 1, max: 12 });
const modelYear = fc.integer({ min: 1972, max: 2071 });
const country = fc.option(
  text(letter, 2).filter((code) => code !== 'US'),
  { nil: undefined },
);

const current = fc
  .record({ mic, serial, buildMonth, modelYear, country, back: fc.integer({ min: -1, max: 8 }) })
  .map(({ back, ...parts }): HinParts => ({ ...parts, buildYear: parts.modelYear - back }));
const straightYear = fc
  .record({ mic, serial, buildMonth, buildYear: modelYear })
  .map((parts): HinParts => ({ ...parts, format: 'straight-year' }));
const withM = fc.record({ mic, serial, buildMonth, modelYear }).map((parts): HinParts => ({
  ...parts,
  buildYear: parts.buildMonth >= 8 ? parts.modelYear - 1 : parts.modelYear,
  format: 'model-year',
}));
const anyParts = fc.oneof(current, straightYear, withM);

const read = (number: string): ValidHin => {
  const reading = decodeHin(number);
  if (!reading.valid) throw new Error(`${number}: ${JSON.stringify(reading.problems)}`);
  return reading;
};

const TRZ: HinParts = { mic: 'TRZ', serial: '00042', buildYear: 2025, buildMonth: 11, modelYear: 2026 };

describe('writing and reading hull identification numbers', () => {
  it('what was written reads back as the same parts, in every form', () => {
    fc.assert(
      fc.property(anyParts, (parts) => {
        const hin = encodeHin(parts);
        const reading = read(hin);
        const { country: code, format = 'current', ...rest } = parts;
        expect(reading).toMatchObject({ ...rest, format, hin });
        expect(reading.country).toBe(code);
        expect(encodeHin(reading)).toBe(hin);
        expect(isStoredForm(hin)).toBe(true);
      }),
    );
  });

  it('a number is found however it was typed: any case, hyphens, spaces, slashes, US- in front', () => {
    const gap = fc.constantFrom('', '', '-', ' ', '/', ' - ', '\u2011');
    fc.assert(
      fc.property(anyParts, fc.array(gap, { minLength: 14, maxLength: 14 }), fc.boolean(), (parts, gaps, lower) => {
        const hin = encodeHin(parts);
        const prefix = parts.country === undefined && lower ? 'us-' : '';
        const typed = prefix + [...hin].map((glyph, i) => (lower ? glyph.toLowerCase() : glyph) + gaps[i]).join('');
        expect(read(typed).hin).toBe(hin);
        expect(normaliseNumber(typed)).toBe(hin);
        expect(isStoredForm(typed)).toBe(typed === hin);
      }),
    );
  });

  it('any text at all is either read or refused with a reason', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 20 }), (anything) => {
        const reading = decodeHin(anything);
        if (reading.valid) expect(decodeHin(reading.hin)).toMatchObject({ valid: true, hin: reading.hin });
        else expect(reading.problems.length).toBeGreaterThan(0);
      }),
    );
  });

  it('every banned letter is reported at its position', () => {
    const reading = decodeHin('ABCIOQ45N4A5');
    expect(reading.valid ? [] : reading.problems.map(({ position }) => position)).toEqual([4, 5, 6, 9]);
  });

  it('a country in front must be two letters', () => {
    expect(decodeHin('G1ABC12345A900').valid).toBe(false);
  });

  it('positions are those of the twelve characters, with or without a country', () => {
    const reading = decodeHin('GB-ABC1O345A900');
    expect(reading.valid ? [] : reading.problems.map(({ position }) => position)).toEqual([5]);
  });

  it('a manufacturer code with a digit is doubted, one with a stroke is refused', () => {
    expect(read('T2Z00042K526').warnings).toEqual([expect.stringContaining('T2Z')]);
    expect(decodeHin('T_Z00042K526').valid).toBe(false);
    expect(decodeHin('TR_00042K526').valid).toBe(false);
  });

  it.each([
    ['a serial with an O', { serial: '0O042' }],
    ['a short serial', { serial: '0042' }],
    ['a small letter', { mic: 'trz' }],
    ['code and serial that only fit together', { mic: 'TR', serial: 'Z00042' }],
    ['month 0', { buildMonth: 0 }],
    ['month 13', { buildMonth: 13 }],
    ['half a month', { buildMonth: 1.5 }],
    ['no model year', { modelYear: undefined }],
    ['a model year of the next century', { modelYear: 2072, buildYear: 2072 }],
    ['a model year a century from the build year', { modelYear: 2125, buildYear: 2025 }],
    ['a model year before numbers began', { modelYear: 1971, buildYear: 1971 }],
    ['a build year ten years before the model year', { buildYear: 2016 }],
    ['a build year two years after the model year', { buildYear: 2028 }],
    ['a country of three letters', { country: 'GBR' }],
    ['an old form with a country', { country: 'GB', format: 'straight-year' }],
    ['an old form whose year starts in another August', { format: 'model-year', buildMonth: 11, buildYear: 2026 }],
  ] as const)('no number is written from %s', (_what, wrong) => {
    expect(() => encodeHin({ ...TRZ, ...wrong })).toThrow(HinNotEncodable);
  });

  it('a straight-year number states no model year, so one that is known is left out', () => {
    const hin = encodeHin({ ...TRZ, buildYear: 1983, modelYear: 1984, format: 'straight-year' });
    expect(hin).toBe('TRZ000421183');
    expect(read(hin).modelYear).toBeUndefined();
  });

  it('US is no country of the ISO form but the display prefix of the US one', () => {
    expect(encodeHin({ ...TRZ, country: 'US' })).toBe(encodeHin(TRZ));
    expect(encodeHin(TRZ)).toBe('TRZ00042K526');
  });
});

describe('hull numbers as they are compared', () => {
  it.each([
    ['h-1042', 'H1042'],
    ['H 10/42', 'H1042'],
    ['US-1042', 'US1042'],
    ['US-ABC12345L495', 'ABC12345L495'],
    ['us abc12345l495', 'ABC12345L495'],
    ['US-ABC1234OL495', 'USABC1234OL495'],
    ['GB-ABC00042A399', 'GBABC00042A399'],
    ['', ''],
  ])('"%s" compares as "%s"', (typed, compared) => {
    expect(normaliseNumber(typed)).toBe(compared);
  });

  it('two hull numbers that differ only by punctuation are one number, on purpose', () => {
    expect(normaliseNumber('26-104-2')).toBe(normaliseNumber('26-10-42'));
  });

  it('comparing a compared number changes nothing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 20 }), (typed) => {
        expect(normaliseNumber(normaliseNumber(typed))).toBe(normaliseNumber(typed));
      }),
    );
  });
});

describe('serials', () => {
  it.each([
    ['00001', '00002'],
    ['00009', '0000A'],
    ['0000Z', '00010'],
    ['0ZZZZ', '10000'],
    ['9ZZZZ', 'A0000'],
    ['ZZZZY', 'ZZZZZ'],
  ])('after %s comes %s', (before, after) => {
    expect(nextSerial(before)).toBe(after);
  });

  it('the next serial is a serial and comes later in the order of the alphabet', () => {
    fc.assert(
      fc.property(
        serial.filter((s) => s !== 'ZZZZZ'),
        (before) => {
          const after = nextSerial(before);
          expect(isSerial(after)).toBe(true);
          // Digits before letters is also the order of the character codes.
          expect(after > before).toBe(true);
        },
      ),
    );
  });

  it('nothing comes after ZZZZZ', () => {
    expect(() => nextSerial('ZZZZZ')).toThrow(SerialsExhausted);
  });

  it.each(['0000', '000000', '0000I', '0000O', '0000Q', '0000a', ''])('"%s" is no serial', (wrong) => {
    expect(isSerial(wrong)).toBe(false);
    expect(() => nextSerial(wrong)).toThrow(SerialInvalid);
  });
});

describe('days of the build', () => {
  it('both ends may be wrong at once, and unknown days are not held against a number', () => {
    const reading = read('ABC12345L495');
    expect(checkBuildDates(reading, {})).toEqual([]);
    expect(checkBuildDates(reading, { constructionBegan: '1995-02-01', leftPlant: '1994-01-31' })).toHaveLength(2);
  });

  it('a day that does not exist is an error of its own', () => {
    expect(() => checkBuildDates(read('ABC12345L495'), { leftPlant: '1994-02-30' })).toThrow(NotACalendarDate);
  });
});
