import { canonicalJson } from '../canonical-json.js';
import { Malformed } from '../exact-shape.js';
import { checkHead, type Fault, signerOf, type TrustedKey } from '../heads/check-head.js';
import { toHex } from '../sha-256.js';
import { leafHash } from '../tree/tree-hash.js';
import { leadsToHead, type ProofBundle, readBundle } from './proof-bundle.js';

/** What can be said of a bundle, in a word for programs and a sentence for people. */
export type BundleVerdict =
  | { readonly is: 'genuine' | 'signer not known'; readonly words: string; readonly bundle: ProofBundle }
  | { readonly is: 'broken'; readonly words: string; /** JSON pointer of the part; '' for all. */ readonly at: string };

/**
 * Says whether a bundle proves its content, with no other help than the keys somebody trusts.
 *
 * - `genuine`: the proof leads to a head of a plant, signed by a key that is trusted for that plant.
 * - `signer not known`: its parts fit together, but anybody can make such a bundle with a key of their own.
 * - `broken`: it is no bundle, or a part does not fit the others.
 *
 * It says nothing of whether what was recorded is true, nor whether entries after this one correct it.
 *
 * @param given a bundle as text, or as bytes in UTF-8; never throws for what it says
 */
export const verifyBundle = (given: string | Uint8Array, trusted: readonly TrustedKey[]): BundleVerdict => {
  const bundle = parsed(given);
  if ('why' in bundle) return broken(bundle);
  const fault = faultOf(bundle);
  if (fault !== null) return broken(fault);
  const signer = signerOf(bundle.head, trusted);
  return signer === 'known'
    ? { is: 'genuine', words: genuine(bundle), bundle }
    : { is: 'signer not known', words: NOT_KNOWN[signer], bundle };
};

const parsed = (given: string | Uint8Array): ProofBundle | Fault => {
  try {
    return readBundle(given);
  } catch (error) {
    if (error instanceof Malformed) return { at: error.at, why: error.message };
    throw error;
  }
};

const faultOf = (bundle: ProofBundle): Fault | null => {
  if (toHex(leafHash(canonicalJson(bundle.content))) !== bundle.leafHash)
    return { at: '/leafHash', why: 'The leaf hash is not that of the content: one of the two was changed.' };
  const ofHead = checkHead(bundle.head, '/head');
  if (ofHead !== null) return ofHead;
  if (!leadsToHead(bundle))
    return { at: '/proof', why: 'The proof does not lead from the leaf at this index to the root of the head.' };
  return null;
};

const broken = ({ at, why }: Fault): BundleVerdict => ({
  is: 'broken',
  at,
  words: `Broken at ${at || 'the text'}: ${why}`,
});

const genuine = ({ index, head }: ProofBundle): string =>
  `Genuine to a head signed by a trusted key: the content is entry ${index} (counted from 0) of the ${head.size} in the ` +
  `journal of plant ${head.plant}, as signed at ${head.at} by key ${head.keyId}.`;

const NOT_KNOWN = {
  unknown:
    'Consistent with itself, but its signer is not known: the key is not among the trusted ones, and anybody can make ' +
    'such a bundle with a key of their own.',
  'of another plant':
    'Consistent with itself, but its signer is not known for this plant: the key is trusted for another plant alone.',
} as const;
