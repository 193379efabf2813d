import { keyIdOf, verifySignature } from '../ed25519.js';
import { fromHex, toHex } from '../sha-256.js';
import { EMPTY_ROOT } from '../tree/tree-hash.js';
import { signedText, type SignedTreeHead } from './tree-head.js';

/** A public key that somebody has reason to trust, and the plant whose heads it signs. */
export interface TrustedKey {
  readonly plant: string;
  /** SHA-256 of the public key, as `keyIdOf` gives it. */
  readonly keyId: string;
}

/** What does not fit: the JSON pointer of the part, and why, in a sentence. */
export interface Fault {
  readonly at: string;
  readonly why: string;
}

/** What is wrong with a head in itself; null when its parts fit together, which says nothing about who signed it. */
export const checkHead = (head: SignedTreeHead, at = ''): Fault | null => {
  if (keyIdOf(fromHex(head.publicKey)) !== head.keyId)
    return { at: `${at}/keyId`, why: 'The key id is not that of the public key.' };
  if (head.size === 0 && head.root !== toHex(EMPTY_ROOT))
    return { at: `${at}/root`, why: 'A journal of no entries has another root.' };
  if (!verifySignature(Buffer.from(signedText(head)), fromHex(head.signature), fromHex(head.publicKey)))
    return { at: `${at}/signature`, why: 'The signature is not one of this key over this head.' };
  return null;
};

/** How far the signer of a head is known: for its plant, for another plant alone, or not at all. */
export const signerOf = (
  head: SignedTreeHead,
  trusted: readonly TrustedKey[],
): 'known' | 'of another plant' | 'unknown' => {
  const plants = trusted.filter(({ keyId }) => keyId === head.keyId).map(({ plant }) => plant);
  if (plants.includes(head.plant)) return 'known';
  return plants.length > 0 ? 'of another plant' : 'unknown';
};
