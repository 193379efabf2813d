import { z } from 'zod';
import * as evidence from '@hull-record/evidence';
import { check } from '../check.js';

const bytes = z
  .string()
  .regex(/^([0-9a-f]{2})*$/, 'bytes as hexadecimal digits')
  .transform((digits) => Buffer.from(digits, 'hex'));

const hex = (of: Uint8Array): string => Buffer.from(of).toString('hex');

/** The first entries as a tree, and what was stored of it. */
const treeOf = (entries: readonly Uint8Array[]): { readonly root: string; readonly read: evidence.ReadSubtree } => {
  const { tree, made } = evidence.appendLeaves(evidence.EMPTY_TREE, entries.map(evidence.leafHash));
  const stored = new Map(made.map(({ level, index, hash }) => [`${level}/${index}`, hash]));
  return {
    root: hex(evidence.rootOf(tree)),
    read: ({ level, index }) => stored.get(`${level}/${index}`) ?? new Uint8Array(),
  };
};

const place = z.number();

/** Checks of canonical JSON, of the tree of a journal, and of signatures. Bytes are hexadecimal digits. */
export const EVIDENCE = {
  'evidence.canonicalText': check(
    'evidence',
    'a JSON text in its canonical form (RFC 8785)',
    { text: z.string() },
    ({ text }) => evidence.canonicalJson(JSON.parse(text)),
  ),
  'evidence.canonicalNumber': check(
    'evidence',
    'the canonical form of the double of 64 bits',
    { bits: bytes },
    ({ bits }) => evidence.canonicalJson(bits.readDoubleBE()),
  ),
  'evidence.leafHash': check('evidence', 'hash of an entry as a leaf (RFC 9162)', { entry: bytes }, ({ entry }) =>
    hex(evidence.leafHash(entry)),
  ),
  'evidence.root': check(
    'evidence',
    'root of the tree of entries',
    { entries: z.array(bytes) },
    ({ entries }) => treeOf(entries).root,
  ),
  'evidence.inclusionProof': check(
    'evidence',
    'proof that the entry at an index, from 0, is in the tree of entries',
    { entries: z.array(bytes), index: place },
    ({ entries, index }) => evidence.inclusionProof(index, entries.length, treeOf(entries).read).map(hex),
  ),
  'evidence.verifyInclusion': check(
    'evidence',
    'whether a proof leads from a leaf hash to a root',
    { index: place, size: place, leaf: bytes, proof: z.array(bytes), root: bytes },
    evidence.verifyInclusion,
  ),
  'evidence.consistencyProof': check(
    'evidence',
    'proof that the tree of entries begins with that of the first of them',
    { entries: z.array(bytes), first: place },
    ({ entries, first }) => evidence.consistencyProof(first, entries.length, treeOf(entries).read).map(hex),
  ),
  'evidence.verifyConsistency': check(
    'evidence',
    'whether a proof shows that a later tree begins with an earlier one',
    { first: place, firstRoot: bytes, second: place, secondRoot: bytes, proof: z.array(bytes) },
    evidence.verifyConsistency,
  ),
  'evidence.sign': check(
    'evidence',
    'public key and signature of a message by the key of a seed (RFC 8032, Ed25519)',
    { seed: bytes, message: bytes },
    ({ seed, message }) => {
      const key = evidence.privateKeyOf(seed);
      return { publicKey: hex(evidence.publicKeyOf(key)), signature: hex(evidence.signatureOf(message, key)) };
    },
  ),
  'evidence.verifySignature': check(
    'evidence',
    'whether a signature is that of the holder of a public key',
    { publicKey: bytes, message: bytes, signature: bytes },
    ({ publicKey, message, signature }) => evidence.verifySignature(message, signature, publicKey),
  ),
};
