import { createHash } from 'node:crypto';

/** 32 bytes of SHA-256. */
export type Hash = Uint8Array;

export const HASH_BYTES = 32;

/** SHA-256 (FIPS 180-4) over the parts, one after another. */
export const sha256 = (...parts: readonly Uint8Array[]): Buffer => {
  const hash = createHash('sha256');
  for (const part of parts) hash.update(part);
  return hash.digest();
};

export const isHash = (bytes: Uint8Array): boolean => bytes.length === HASH_BYTES;

export const sameBytes = (a: Uint8Array, b: Uint8Array): boolean => Buffer.compare(a, b) === 0;

/** Bytes as small hexadecimal digits, two a byte: the one spelling that is written and read. */
export const toHex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex');

/** The bytes of hexadecimal digits that were checked before. */
export const fromHex = (digits: string): Buffer => Buffer.from(digits, 'hex');
