import { type Hash, isHash, sha256 } from '../sha-256.js';

const LEAF = Uint8Array.of(0x00);
const NODE = Uint8Array.of(0x01);

/** Root of the tree of no leaves: SHA-256 of nothing (RFC 9162, section 2.1.1). */
export const EMPTY_ROOT: Hash = sha256();

/**
 * Hash of an entry as a leaf: SHA-256 of 0x00 and the entry (RFC 9162, section 2.1.1).
 *
 * @param entry bytes, or text that is taken as UTF-8
 * @throws RangeError for half of a surrogate pair: UTF-8 has no form for it, and two texts would have one hash
 */
export const leafHash = (entry: Uint8Array | string): Hash => {
  if (typeof entry !== 'string') return sha256(LEAF, entry);
  if (/\p{Surrogate}/u.test(entry)) throw new RangeError('An entry has half of a surrogate pair.');
  return sha256(LEAF, Buffer.from(entry, 'utf8'));
};

/**
 * Hash of a node over its two subtrees: SHA-256 of 0x01, left and right (RFC 9162, section 2.1.1). The prefix keeps
 * a node from being passed off as a leaf.
 *
 * @throws RangeError unless both are 32 bytes: a boundary that can be moved would give two pairs one hash
 */
export const nodeHash = (left: Hash, right: Hash): Hash => {
  if (!isHash(left) || !isHash(right)) throw new RangeError('A node stands over two hashes of 32 bytes.');
  return sha256(NODE, left, right);
};
