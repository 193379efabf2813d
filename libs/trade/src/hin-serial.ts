import { TradeError } from './errors.js';

/** What positions 4 to 8 may hold: digits and letters except I, O and Q (33 CFR 181.25(b)). */
export const SERIAL_ALPHABET = '0123456789ABCDEFGHJKLMNPRSTUVWXYZ';

const LENGTH = 5;

/** A text is no serial: five digits or letters without I, O and Q. Data: `serial`. */
export class SerialInvalid extends TradeError {
  readonly code = 'serial-invalid';

  constructor(serial: string) {
    super(`"${serial}" is no serial: five digits or capital letters, without I, O and Q.`, { serial });
  }
}

/** No serial follows ZZZZZ. Data: `serial`. */
export class SerialsExhausted extends TradeError {
  readonly code = 'serials-exhausted';

  constructor(serial: string) {
    super(`No serial of five characters follows ${serial}.`, { serial });
  }
}

/** Whether a text is a serial in stored form. */
export const isSerial = (text: string): boolean =>
  text.length === LENGTH && [...text].every((glyph) => SERIAL_ALPHABET.includes(glyph));

/**
 * The serial after this one, counting in base 33 with digits before letters: 00009, 0000A ... 0000Z, 00010.
 *
 * The order is common practice; no rule asks for consecutive serials, so a gap is never an error.
 * Throws SerialInvalid, and SerialsExhausted after ZZZZZ.
 */
export const nextSerial = (serial: string): string => {
  if (!isSerial(serial)) throw new SerialInvalid(serial);
  const base = SERIAL_ALPHABET.length;
  let next = [...serial].reduce((sum, glyph) => sum * base + SERIAL_ALPHABET.indexOf(glyph), 0) + 1;
  if (next === base ** LENGTH) throw new SerialsExhausted(serial);
  let text = '';
  for (let place = 0; place < LENGTH; place += 1) {
    text = SERIAL_ALPHABET.charAt(next % base) + text;
    next = Math.floor(next / base);
  }
  return text;
};
