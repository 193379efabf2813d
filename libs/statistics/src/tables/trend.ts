import { InputInvalid } from '../errors.js';
import { chiSquareUpper } from '../special/chi-square.js';

/** Hulls of one dose: a score such as the share of a lot, how many there are and how many have a claim. */
export interface DoseGroup {
  readonly score: number;
  readonly claims: number;
  readonly hulls: number;
}

/**
 * Whether the proportion of claims moves with the score: the Cochran-Armitage test, two-sided, 1 degree of freedom.
 *
 * chi2 = (sum s (x - n p))^2 / (p (1 - p) (sum n s^2 - (sum n s)^2 / N)), without continuity correction
 * (Cochran 1954, Armitage 1955). Throws InputInvalid when all scores or all outcomes are alike.
 */
export const trendTest = (groups: readonly DoseGroup[]): { readonly chiSquare: number; readonly p: number } => {
  const total = (of: (group: DoseGroup) => number): number => groups.reduce((all, group) => all + of(group), 0);
  const hulls = total((group) => group.hulls);
  const share = total((group) => group.claims) / hulls;
  const moved = total(({ score, claims, hulls: n }) => score * (claims - n * share));
  const spread =
    total(({ score, hulls: n }) => n * score ** 2) - total(({ score, hulls: n }) => n * score) ** 2 / hulls;
  const variance = share * (1 - share) * spread;
  if (!(variance > 0))
    throw new InputInvalid('groups', groups.length, 'of differing scores, some with a claim, not all');
  const chiSquare = moved ** 2 / variance;
  return { chiSquare, p: chiSquareUpper(chiSquare, 1) };
};
