import { createHash, randomBytes } from 'node:crypto';

/** Letters and digits that are not taken for one another when they are typed: no I, L, O, U. */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const BITS = 128;
const LENGTH = Math.ceil(BITS / 5);

/** A new code of 128 random bits, 26 letters and digits. */
export const newCode = (): string => {
  let rest = BigInt(`0x${randomBytes(BITS / 8).toString('hex')}`);
  let code = '';
  for (let i = 0; i < LENGTH; i += 1, rest >>= 5n) code = (SIGNS[Number(rest & 31n)] ?? '') + code;
  return code;
};

/** A code as it was typed, or scanned: case, spaces and dashes do not matter; what looks alike is taken for one. */
export const readCode = (typed: string): string =>
  typed.toUpperCase().replace(/[\s-]/g, '').replaceAll('O', '0').replace(/[IL]/g, '1');

/** A code in groups of five, to be typed. */
export const grouped = (code: string): string => code.replace(/.{5}(?=.)/g, '$& ');

/** What facts keep of a code. */
export const digestOfCode = (code: string): Buffer => createHash('sha256').update(`certificate ${code}`).digest();
