import {
  appendLeaves,
  canonicalJson,
  EMPTY_TREE,
  inclusionProof,
  keyIdOf,
  leafHash,
  makeBundle,
  privateKeyOf,
  type ProofBundle,
  publicKeyOf,
  type ReadSubtree,
  rootOf,
  signTreeHead,
  type SignedTreeHead,
  type TreeHead,
  type TrustedKey,
} from '@hull-record/evidence';

/** Invented keys: one that the plant signs with, and one of somebody else. */
export const PLANT_KEY = privateKeyOf(new Uint8Array(32).fill(1));
export const OTHER_KEY = privateKeyOf(new Uint8Array(32).fill(2));
export const PLANT = 'MAIN';
export const TRUSTED: TrustedKey = { plant: PLANT, keyId: keyIdOf(publicKeyOf(PLANT_KEY)) };
export const TRUSTED_OTHER: TrustedKey = { plant: 'NORTH', keyId: keyIdOf(publicKeyOf(OTHER_KEY)) };

/** A journal of invented entries, and what was stored of its tree. */
export interface SignedJournal {
  readonly head: SignedTreeHead;
  readonly read: ReadSubtree;
  /** Bundle of the entry at an index. */
  readonly bundle: (index: number) => ProofBundle;
}

/** Keeps entries in a journal and signs its head, whose other parts can be given. */
export const signedJournal = (
  entries: readonly unknown[],
  told: Partial<TreeHead> = {},
  key = PLANT_KEY,
): SignedJournal => {
  const { tree, made } = appendLeaves(
    EMPTY_TREE,
    entries.map((entry) => leafHash(canonicalJson(entry))),
  );
  const stored = new Map(made.map(({ level, index, hash }) => [`${level}/${index}`, hash]));
  const read: ReadSubtree = ({ level, index }) => stored.get(`${level}/${index}`) ?? new Uint8Array();
  const root = Buffer.from(rootOf(tree)).toString('hex');
  const at = '2026-04-11T09:30:00.000Z';
  const head = signTreeHead({ plant: PLANT, size: entries.length, root, at, previous: null, ...told }, key);
  const bundle = (index: number): ProofBundle =>
    makeBundle({ content: entries[index], index, proof: inclusionProof(index, entries.length, read), head });
  return { head, read, bundle };
};

/** Entries as a journal keeps them, with letters of one to four bytes. */
export const journalEntries = (count: number): readonly unknown[] =>
  Array.from({ length: count }, (_, i) => ({
    kind: 'lot.received',
    lot: `VE-${i}`,
    note: 'Fass Nº 7 \ufffd 😀 "dry"\n',
    kg: '219.5',
    opened: null,
    held: i % 2 === 0,
    parts: [i, { layer: 1 }],
  }));
