import type { Hash } from '../sha-256.js';

/**
 * Goes up from a place to the root with the hashes of a proof (the loop of RFC 9162, sections 2.1.3.2 and 2.1.4.2).
 *
 * @param place where to begin, and `last`, the last place of that level
 * @param join takes each hash, and whether it stands to the left of what was joined so far
 * @returns whether the proof was as long as the way
 */
export const climb = (
  place: number,
  last: number,
  proof: readonly Hash[],
  join: (hash: Hash, isLeft: boolean) => void,
): boolean => {
  let [at, end] = [place, last];
  for (const hash of proof) {
    if (end === 0) return false;
    const isLeft = at % 2 === 1 || at === end;
    join(hash, isLeft);
    // The last place of a ragged level has no sibling: up to the level on which it has one to the left.
    while (isLeft && at % 2 === 0 && at !== 0) [at, end] = [half(at), half(end)];
    [at, end] = [half(at), half(end)];
  }
  return end === 0;
};

/** The place above; by arithmetic, for the bit operators of the language end at 32 bits. */
export const half = (place: number): number => Math.floor(place / 2);
