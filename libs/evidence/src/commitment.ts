import { createHash } from 'node:crypto';

/**
 * Commitment to a personal value: SHA-256 over its salt and itself, in hexadecimal.
 *
 * The journal holds this in place of the value. Salt and value lie together elsewhere and can be erased together;
 * what stays says nothing without them.
 *
 * @param salt at least 128 random bits as text, one per value
 */
export const commitment = (salt: string, value: string): string => {
  if (salt.length < 22) throw new RangeError('A salt has at least 128 bits: 22 characters of base64url.');
  return createHash('sha256').update(`${salt.length}:${salt}:${value}`, 'utf8').digest('hex');
};
