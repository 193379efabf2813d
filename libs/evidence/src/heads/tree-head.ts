import type { KeyObject } from 'node:crypto';
import { canonicalJson } from '../canonical-json.js';
import { keyIdOf, publicKeyOf, SIGNATURE_BYTES, KEY_BYTES, signatureOf } from '../ed25519.js';
import { exactly, hexOf, instant, literally, orNull, type Shape, someText, wholeNumber } from '../exact-shape.js';
import { HASH_BYTES, sha256, toHex } from '../sha-256.js';

/** Says what a signed text is, so that no text signed for another purpose can be taken for a head. */
export const HEAD_FORMAT = 'hull-record/tree-head/1' as const;

/** What the journal of a plant was at a moment. */
export interface TreeHead {
  /** Code of the plant; each plant has a journal of its own. */
  readonly plant: string;
  /** Number of entries. */
  readonly size: number;
  /** Root of the tree of the entries (RFC 9162), 32 bytes in hexadecimal. */
  readonly root: string;
  /** Instant in UTC to the millisecond, as the signer's clock told it. */
  readonly at: string;
  /** `headHash` of the head signed before it; null for the first. */
  readonly previous: string | null;
}

/** A head with the key it is signed by. Everything but the signature is what was signed. */
export interface SignedTreeHead extends TreeHead {
  readonly format: typeof HEAD_FORMAT;
  /** SHA-256 of the public key. */
  readonly keyId: string;
  /** Ed25519, 32 bytes in hexadecimal. It lets anybody check the signature, and gives nobody a reason to trust it. */
  readonly publicKey: string;
  /** Ed25519 over `signedText`, 64 bytes in hexadecimal. */
  readonly signature: string;
}

const HEAD: Shape<TreeHead> = {
  plant: someText,
  size: wholeNumber,
  root: hexOf(HASH_BYTES),
  at: instant,
  previous: orNull(hexOf(HASH_BYTES)),
};

const SIGNED_HEAD: Shape<SignedTreeHead> = {
  ...HEAD,
  format: literally(HEAD_FORMAT),
  keyId: hexOf(HASH_BYTES),
  publicKey: hexOf(KEY_BYTES),
  signature: hexOf(SIGNATURE_BYTES),
};

/** A value as a signed head. @throws Malformed; `at` is the JSON pointer of the value */
export const asSignedHead = (value: unknown, at = ''): SignedTreeHead => exactly(value, SIGNED_HEAD, at);

/**
 * Signs a head with the private key of a plant.
 *
 * @throws Malformed for a head that is none: nothing else is ever signed
 * @throws NotJson for half of a surrogate pair in the plant
 * @throws RangeError for a key that is not a private one for Ed25519
 */
export const signTreeHead = (head: TreeHead, key: KeyObject): SignedTreeHead => {
  const publicKey = publicKeyOf(key);
  const told = {
    ...exactly(head, HEAD, ''),
    format: HEAD_FORMAT,
    keyId: keyIdOf(publicKey),
    publicKey: toHex(publicKey),
  };
  return { ...told, signature: toHex(signatureOf(Buffer.from(canonicalJson(told)), key)) };
};

/** What is signed: the canonical JSON (RFC 8785) of all of a head but its signature. */
export const signedText = ({ signature: _signature, ...told }: SignedTreeHead): string => canonicalJson(told);

/** A signed head as one line of canonical JSON, without a line ending: to be mailed, printed or kept. */
export const headLine = (head: SignedTreeHead): string => canonicalJson(head);

/** Name of a signed head: SHA-256 of its line, in hexadecimal. The head after it says this as `previous`. */
export const headHash = (head: SignedTreeHead): string => toHex(sha256(Buffer.from(headLine(head))));
