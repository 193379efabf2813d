import { isBelow } from '../numbers.js';

/** How the thickness of a zone stands to what its schedule gives. */
export interface ThicknessVerdict {
  readonly verdict: 'inside' | 'thin' | 'thick' | 'cannot be judged';
  readonly meanMm: number | null;
  readonly points: number;
  /** Points under the lower limit, by their index: each is judged, not the mean alone. */
  readonly thinPoints: readonly number[];
  readonly warnings: readonly string[];
}

/** Points that a class society asks of a laminate (LR Rules for Materials, July 2022, Ch 14 Sec 5, 5.5.2). */
export const THICKNESS_POINTS = 10;

/**
 * Judges measured points (mm, gel coat not included) against the expected thickness (mm) of a zone.
 *
 * `tolerance` is a fraction to either side, of the plant. One thin point is thin, whatever the mean; thick is judged by
 * the mean, since overlaps are local. Fewer than ten points is a warning.
 */
export const judgeThickness = (points: readonly number[], expectedMm: number, tolerance: number): ThicknessVerdict => {
  const sound = points.every((mm) => Number.isFinite(mm) && mm > 0) && expectedMm > 0 && tolerance >= 0;
  if (points.length === 0 || !sound || !Number.isFinite(expectedMm) || !Number.isFinite(tolerance))
    return { verdict: 'cannot be judged', meanMm: null, points: points.length, thinPoints: [], warnings: [] };
  const meanMm = points.reduce((sum, mm) => sum + mm, 0) / points.length;
  const thinPoints = points.flatMap((mm, i) => (isBelow(mm, expectedMm * (1 - tolerance)) ? [i] : []));
  const warnings =
    points.length < THICKNESS_POINTS ? [`${points.length} points; at least ${THICKNESS_POINTS} are asked.`] : [];
  const thick = isBelow(expectedMm * (1 + tolerance), meanMm);
  const verdict = thinPoints.length > 0 ? 'thin' : thick ? 'thick' : 'inside';
  return { verdict, meanMm, points: points.length, thinPoints, warnings };
};

/** How the glass used on an area compares with the areal mass the schedule asks. Fractions; 0.05 is five per cent more. */
export const glassAgainstSchedule = (usedKg: number, areaM2: number, scheduledKgPerM2: number): number | null =>
  usedKg >= 0 && areaM2 > 0 && scheduledKgPerM2 > 0 && Number.isFinite(usedKg + areaM2 + scheduledKgPerM2)
    ? usedKg / areaM2 / scheduledKgPerM2 - 1
    : null;
