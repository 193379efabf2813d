import type { Unit } from './unit.js';

/** Scripts that are written without spaces between words, with their punctuation and full-width forms. */
const WITHOUT_SPACES =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Bopomofo}\u3000-\u303f\u30fb\u30fc\uff01-\uff60\uffe0-\uffe6]/u;
/** Closing and trailing signs and small kana: UAX #14 classes CL, CP, EX, IS and NS, from memory. */
const NEVER_FIRST =
  /^[\p{Pe}\p{Pf}!?.,:;%\u3001\u3002\u3005\u303b\u3041\u3043\u3045\u3047\u3049\u3063\u3083\u3085\u3087\u308e\u3095\u3096\u309b-\u309e\u30a1\u30a3\u30a5\u30a7\u30a9\u30c3\u30e3\u30e5\u30e7\u30ee\u30f5\u30f6\u30fb-\u30fe\uff01\uff05\uff0c\uff0e\uff1a\uff1b\uff1f…]/u;
/** Opening signs: UAX #14 class OP. */
const NEVER_LAST = /[\p{Ps}\p{Pi}]$/u;

/**
 * Whether a line may begin with a unit though no space stands before it: beside writing without spaces, unless the line
 * would begin with a closing sign or the one above end with an opening one (UAX #14, rules LB13 and LB14).
 */
export const opensLine = (before: Unit | undefined, unit: Unit): boolean =>
  before?.kind === 'text' &&
  unit.kind === 'text' &&
  (WITHOUT_SPACES.test(before.text) || WITHOUT_SPACES.test(unit.text)) &&
  !NEVER_FIRST.test(unit.text) &&
  !NEVER_LAST.test(before.text);
