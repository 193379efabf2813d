import { canonicalJson } from '../canonical-json.js';
import { anything, exactly, hexOf, listOf, literally, type Shape, wholeNumber } from '../exact-shape.js';
import { checkHead } from '../heads/check-head.js';
import { readLine } from '../heads/read-head.js';
import { asSignedHead, type SignedTreeHead } from '../heads/tree-head.js';
import { fromHex, type Hash, HASH_BYTES, toHex } from '../sha-256.js';
import { verifyInclusion } from '../tree/inclusion.js';
import { leafHash } from '../tree/tree-hash.js';

export const BUNDLE_FORMAT = 'hull-record/proof-bundle/1' as const;

/** Longest proof of a tree whose size a double holds exactly. */
const MOST_HASHES = 53;

/** An entry of a journal with everything needed to prove, without asking anybody, that it stood there. */
export interface ProofBundle {
  readonly format: typeof BUNDLE_FORMAT;
  /** The entry: any JSON value. Its canonical JSON is what the leaf is the hash of. */
  readonly content: unknown;
  /** Hash of the content as a leaf, 32 bytes in hexadecimal. */
  readonly leafHash: string;
  /** Place of the entry in the journal, from 0. */
  readonly index: number;
  /** Proof of inclusion (RFC 9162, section 2.1.3), nearest sibling first, 32 bytes each in hexadecimal. */
  readonly proof: readonly string[];
  readonly head: SignedTreeHead;
}

/** The head has a form of its own. */
type HeadUnread = Omit<ProofBundle, 'head'> & { readonly head: unknown };

const BUNDLE: Shape<HeadUnread> = {
  format: literally(BUNDLE_FORMAT),
  content: anything,
  leafHash: hexOf(HASH_BYTES),
  index: wholeNumber,
  proof: listOf(hexOf(HASH_BYTES), MOST_HASHES),
  head: anything,
};

/** What a bundle is made of. */
export interface BundleParts {
  readonly content: unknown;
  readonly index: number;
  readonly proof: readonly Hash[];
  readonly head: SignedTreeHead;
}

/**
 * Puts a bundle together.
 *
 * @throws NotJson for content that JSON has no form for
 * @throws RangeError for a head whose parts do not fit, and a proof that does not lead to it: a bundle that proves
 *   nothing is none
 */
export const makeBundle = ({ content, index, proof, head }: BundleParts): ProofBundle => {
  const bundle: ProofBundle = {
    format: BUNDLE_FORMAT,
    content,
    leafHash: toHex(leafHash(canonicalJson(content))),
    index,
    proof: proof.map(toHex),
    head,
  };
  const fault = checkHead(head);
  if (fault !== null) throw new RangeError(fault.why);
  if (!leadsToHead(bundle)) throw new RangeError('The proof does not lead from the content to the head.');
  return bundle;
};

/** A bundle as one line of canonical JSON, without a line ending. */
export const bundleText = (bundle: ProofBundle): string => canonicalJson(bundle);

/**
 * The bundle of a text, as `bundleText` writes it; one line ending after it is let pass.
 *
 * @param given text, or its bytes in UTF-8
 * @throws Malformed for any other text, with the JSON pointer of what has not the form of a bundle
 */
export const readBundle = (given: string | Uint8Array): ProofBundle => {
  const bundle = exactly(readLine(given), BUNDLE, '');
  return { ...bundle, head: asSignedHead(bundle.head, '/head') };
};

/** Whether the proof leads from the leaf hash at its place to the root of the head. */
export const leadsToHead = ({ index, leafHash: leaf, proof, head }: ProofBundle): boolean =>
  verifyInclusion({ index, size: head.size, leaf: fromHex(leaf), proof: proof.map(fromHex), root: fromHex(head.root) });
