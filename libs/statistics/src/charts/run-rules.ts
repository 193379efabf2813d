import { at } from '../numbers.js';

/** A pattern that a chart is searched for; distances in standard deviations from the centre. */
export type RunRule =
  /** `count` of `of` points in a row beyond a distance on one side; 8 of 8 beyond 0 is a run. */
  | { readonly kind: 'beyond'; readonly count: number; readonly of: number; readonly distance: number }
  /** So many points in a row, each above the one before, or each below. */
  | { readonly kind: 'trend'; readonly count: number }
  /** So many points in a row, up and down by turns. */
  | { readonly kind: 'alternating'; readonly count: number }
  /** So many points in a row nearer than a distance, on either side: limits too wide, or readings made up. */
  | { readonly kind: 'near'; readonly count: number; readonly distance: number }
  /** So many points in a row farther than a distance, on both sides: two populations on one chart. */
  | { readonly kind: 'far'; readonly count: number; readonly distance: number };

const beyond = (count: number, of: number, distance: number): RunRule => ({ kind: 'beyond', count, of, distance });

/**
 * The four rules of the Western Electric handbook (1956). Together they cut the mean time to a false signal from 370
 * points to about 92 (Champ and Woodall 1987, from memory).
 */
export const WESTERN_ELECTRIC: readonly RunRule[] = [
  beyond(1, 1, 3),
  beyond(2, 3, 2),
  beyond(4, 5, 1),
  beyond(8, 8, 0),
];

/** The eight rules of Nelson (1984): lengths are settings, for 7, 8 and 9 all occur in standards. */
export const NELSON: readonly RunRule[] = [
  beyond(1, 1, 3),
  beyond(9, 9, 0),
  { kind: 'trend', count: 6 },
  { kind: 'alternating', count: 14 },
  beyond(2, 3, 2),
  beyond(4, 5, 1),
  { kind: 'near', count: 15, distance: 1 },
  { kind: 'far', count: 8, distance: 1 },
];

/**
 * The places, from 0, of points that complete a pattern.
 *
 * `zs` are values less the centre, over sigma. A point on the centre line is on neither side and ends a run.
 */
export const runsOf = (zs: readonly number[], rule: RunRule): readonly number[] =>
  zs.flatMap((_, i) => (completes(zs, i, rule) ? [i] : []));

const completes = (zs: readonly number[], i: number, rule: RunRule): boolean => {
  if (rule.kind === 'beyond')
    return [1, -1].some((side) =>
      manyBeyond(
        zs.map((z) => z * side),
        i,
        rule,
      ),
    );
  if (i + 1 < rule.count) return false;
  const run = zs.slice(i + 1 - rule.count, i + 1);
  if (rule.kind === 'near') return run.every((z) => Math.abs(z) < rule.distance);
  if (rule.kind === 'far')
    return run.every((z) => Math.abs(z) > rule.distance) && run.some((z) => z > 0) && run.some((z) => z < 0);
  const steps = run.slice(1).map((z, j) => Math.sign(z - at(run, j)));
  if (rule.kind === 'trend') return steps[0] !== 0 && steps.every((step) => step === steps[0]);
  return steps[0] !== 0 && steps.slice(1).every((step, j) => step === -at(steps, j));
};

const manyBeyond = (
  zs: readonly number[],
  i: number,
  { count, of, distance }: { count: number; of: number; distance: number },
): boolean =>
  at(zs, i) > distance && zs.slice(Math.max(0, i + 1 - of), i + 1).filter((z) => z > distance).length >= count;
