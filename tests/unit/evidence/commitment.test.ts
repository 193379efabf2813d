import { describe, expect, it } from '@jest/globals';
import { createHash } from 'node:crypto';
import { commitment } from '@hull-record/evidence';

const SALT = 'AAAAAAAAAAAAAAAAAAAAAA';

describe('a commitment', () => {
  it('is SHA-256 over the length of the salt, the salt and the value', () => {
    const told = createHash('sha256').update(`22:${SALT}:Åse Example`, 'utf8').digest('hex');
    expect(commitment(SALT, 'Åse Example')).toBe(told);
  });

  it('is another one with another salt or another value', () => {
    const made = [commitment(SALT, 'a'), commitment(SALT, 'b'), commitment(`${SALT.slice(1)}B`, 'a')];
    expect(new Set(made).size).toBe(3);
  });

  it('cannot be opened with a boundary moved between salt and value', () => {
    expect(commitment(`${SALT}:1`, '2')).not.toBe(commitment(SALT, '1:2'));
  });

  it('refuses a salt of less than 128 bits, which could be guessed', () => {
    expect(() => commitment(SALT.slice(1), 'a')).toThrow(RangeError);
  });
});
