import { createHash } from 'node:crypto';

/**
 * The Merkle tree of RFC 9162, section 2.1, written down from its recursive definitions and nothing else: slow, and
 * independent of the library it checks.
 */

type Bytes = Uint8Array;

const sha = (...parts: readonly Bytes[]): Buffer => createHash('sha256').update(Buffer.concat(parts)).digest();

/** Largest power of two less than n. */
const k = (n: number): number => 2 ** (Math.ceil(Math.log2(n)) - 1);

/** MTH(D_n), section 2.1.1. */
export const mth = (d: readonly Bytes[]): Buffer => {
  const [only] = d;
  if (only === undefined) return sha();
  if (d.length === 1) return sha(Buffer.from('00', 'hex'), only);
  const split = k(d.length);
  return sha(Buffer.from('01', 'hex'), mth(d.slice(0, split)), mth(d.slice(split)));
};

/** PATH(m, D_n), section 2.1.3.1. */
export const path = (m: number, d: readonly Bytes[]): readonly Buffer[] => {
  if (d.length === 1) return [];
  const split = k(d.length);
  const [left, right] = [d.slice(0, split), d.slice(split)];
  return m < split ? [...path(m, left), mth(right)] : [...path(m - split, right), mth(left)];
};

/** PROOF(m, D_n), section 2.1.4.1. */
export const proof = (m: number, d: readonly Bytes[]): readonly Buffer[] => subproof(m, d, true);

const subproof = (m: number, d: readonly Bytes[], known: boolean): readonly Buffer[] => {
  if (m === d.length) return known ? [] : [mth(d)];
  const split = k(d.length);
  const [left, right] = [d.slice(0, split), d.slice(split)];
  return m <= split ? [...subproof(m, left, known), mth(right)] : [...subproof(m - split, right, false), mth(left)];
};
