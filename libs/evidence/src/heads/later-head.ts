import { fromHex, type Hash } from '../sha-256.js';
import { verifyConsistency } from '../tree/consistency.js';
import { checkHead, type Fault } from './check-head.js';
import type { SignedTreeHead } from './tree-head.js';

/** Two heads of one journal, with the proof that it was only appended to between them. */
export interface LaterHead {
  /** The head that somebody has held since it was signed. */
  readonly held: SignedTreeHead;
  readonly later: SignedTreeHead;
  /** Proof of consistency from the size of the one to that of the other. */
  readonly proof: readonly Hash[];
}

/**
 * What speaks against the later head being of the same journal, unchanged since the head that was held; null when
 * nothing does. Whether the signers are trusted is another question: `signerOf`.
 *
 * Two heads of one size and different roots are both signed, so that whoever holds them can show that the signer told
 * two stories.
 */
export const checkLaterHead = ({ held, later, proof }: LaterHead): Fault | null => {
  const ownFault = checkHead(held, '/held') ?? checkHead(later, '/later');
  if (ownFault !== null) return ownFault;
  if (held.plant !== later.plant)
    return { at: '/later/plant', why: 'The heads are of two plants, and so of two journals.' };
  if (later.size < held.size) return { at: '/later/size', why: 'The later head has fewer entries than the one held.' };
  if (later.size === held.size && later.root !== held.root)
    return { at: '/later/root', why: 'The heads have one size and two roots: two journals were signed.' };
  if (later.at < held.at) return { at: '/later/at', why: 'The later head was signed before the one held.' };
  const claim = {
    first: held.size,
    firstRoot: fromHex(held.root),
    second: later.size,
    secondRoot: fromHex(later.root),
  };
  if (!verifyConsistency({ ...claim, proof }))
    return {
      at: '/proof',
      why: 'The proof does not show that the journal of the head held is the beginning of the later one.',
    };
  return null;
};
