/** A source of whole numbers, each from 0 to 2^32 - 1 and equally likely. */
export type Random = () => number;

const turned = (x: number, by: number): number => (x << by) | (x >>> (32 - by));

/**
 * Numbers of the generator xoshiro128** of Blackman and Vigna (version 1.1, public domain) from a state of four words,
 * not all 0.
 *
 * A permutation, a bootstrap or a forecast names its seed, so that anybody gets the same numbers again.
 */
export const xoshiro = (words: readonly [number, number, number, number]): Random => {
  const state = Uint32Array.from(words);
  return () => {
    const result = Math.imul(turned(Math.imul(state[1] as number, 5), 7), 9) >>> 0;
    const shifted = (state[1] as number) << 9;
    state[2] = (state[2] as number) ^ (state[0] as number);
    state[3] = (state[3] as number) ^ (state[1] as number);
    state[1] = (state[1] as number) ^ (state[2] as number);
    state[0] = (state[0] as number) ^ (state[3] as number);
    state[2] = (state[2] as number) ^ shifted;
    state[3] = turned(state[3] as number, 11);
    return result;
  };
};

/**
 * A generator from a seed, a whole number of which the lowest 32 bits count.
 *
 * The four words of the state are steps of a 32 bit mixing of Stafford's kind over a Weyl sequence, so that seeds next to
 * each other give unlike streams; the constants are those of MurmurHash3.
 */
export const seeded = (seed: number): Random => {
  const word = (step: number): number => {
    let x = (seed + Math.imul(step, 0x9e3779b9)) | 0;
    x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
    x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
    return (x ^ (x >>> 16)) >>> 0;
  };
  return xoshiro([word(1), word(2), word(3), word(4)]);
};
