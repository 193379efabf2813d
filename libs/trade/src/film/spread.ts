import { isBelow, NumberInvalid, requireNotNegative, requirePositive } from '../numbers.js';

/** Kilograms of a liquid that a wet film takes, without losses: area (m2) x film (um) x density (kg/L). */
export const filmKg = (areaM2: number, filmUm: number, densityKgPerL: number): number =>
  // 1 m2 x 1 um = 1 mL = 1e-3 L.
  requirePositive('area', areaM2) *
  requireNotNegative('film', filmUm) *
  1e-3 *
  requirePositive('density', densityKgPerL);

/** Wet film (um) that kilograms of a liquid make when spread over an area (m2) without losses. */
export const filmFromKgUm = (kg: number, areaM2: number, densityKgPerL: number): number =>
  (requireNotNegative('mass', kg) / requirePositive('density', densityKgPerL) / requirePositive('area', areaM2)) * 1e3;

/** What an amount of liquid says about the film it was said to make. */
export interface FilmFit {
  /** Kilograms that the film as measured takes on the area, without losses. */
  readonly expectedKg: number;
  /** Part of what was used that is not in the film: overspray and losses when positive, a missing entry when negative. */
  readonly lostFraction: number;
  readonly verdict: 'fits' | 'more used than the film holds' | 'less used than the film holds' | 'cannot be judged';
  readonly text: string;
}

interface FilmAsMade {
  readonly areaM2: number;
  /** Mean of the film as measured, um. */
  readonly filmUm: number;
  readonly densityKgPerL: number;
  readonly usedKg: number;
  /** Largest part that overspray and losses may take, such as 0.3; of the material's own data. */
  readonly lossAllowance: number;
}

/**
 * Whether the kilograms used fit the film that was measured over the area.
 *
 * A film cannot hold more than was used; of what was used, no more than the loss allowance may be missing from it.
 * Ten per cent either way passes for the reach of a notch gauge (from memory, common practice). What is no positive
 * number cannot be judged.
 */
export const judgeFilmFit = ({ areaM2, filmUm, densityKgPerL, usedKg, lossAllowance }: FilmAsMade): FilmFit => {
  const known = [areaM2, filmUm, densityKgPerL, usedKg].every((value) => Number.isFinite(value) && value > 0);
  if (!known || !(lossAllowance >= 0 && lossAllowance < 1)) {
    const text = 'Area, film, density and kilograms must be more than zero, and the loss allowance below 1.';
    return { expectedKg: 0, lostFraction: 0, verdict: 'cannot be judged', text };
  }
  const expectedKg = filmKg(areaM2, filmUm, densityKgPerL);
  const lostFraction = 1 - expectedKg / usedKg;
  const verdict = verdictOf(expectedKg, usedKg, lossAllowance);
  const text = `${usedKg} kg were used; ${expectedKg.toFixed(2)} kg are in a film of ${filmUm.toFixed(0)} um on ${areaM2} m2.`;
  return { expectedKg, lostFraction, verdict, text };
};

const GAUGE_REACH = 0.1;

const verdictOf = (expectedKg: number, usedKg: number, lossAllowance: number): FilmFit['verdict'] => {
  if (isBelow(usedKg * (1 + GAUGE_REACH), expectedKg)) return 'less used than the film holds';
  if (isBelow(expectedKg, usedKg * (1 - lossAllowance) * (1 - GAUGE_REACH))) return 'more used than the film holds';
  return 'fits';
};

/**
 * Dry film of a coating that dries: wet film x volume solids (per cent) / 100 (coatings glossary; one page prints a
 * division, which is wrong). Not for gel coat, which cures rather than dries. Film in any unit of length.
 */
export const dryFilm = (wet: number, solidsPercent: number): number =>
  (requireNotNegative('wet film', wet) * requireSolids(solidsPercent)) / 100;

/**
 * Wet film of a coating that dries, for a dry film wanted: dry x (1 + thinner fraction) / volume solids (gauge maker's
 * article). `thinnerPercent` is volume of thinner per volume of coating, per cent.
 */
export const wetFilm = (dry: number, solidsPercent: number, thinnerPercent = 0): number =>
  (requireNotNegative('dry film', dry) * (100 + requireNotNegative('thinner', thinnerPercent))) /
  requireSolids(solidsPercent);

const requireSolids = (percent: number): number => {
  if (requirePositive('volume solids', percent) > 100)
    throw new NumberInvalid('volume solids', percent, 'at most 100 per cent');
  return percent;
};
