import type { Skin } from '../skin.js';

/**
 * The area of a shell below the waterline in m2, both sides, from its girths; undefined where a station has no waterline.
 *
 * Trapezoids between stations on the unrolled skin, without the transom: good enough to say how many readings practice asks.
 */
export const bottomAreaM2 = ({ stations }: Skin): number | undefined => {
  let mm2 = 0;
  for (const [i, right] of stations.entries()) {
    const left = stations[i - 1];
    if (right.waterlineGirthMm === undefined) return undefined;
    if (left?.waterlineGirthMm === undefined) continue;
    mm2 += ((left.waterlineGirthMm + right.waterlineGirthMm) / 2) * (right.xMm - left.xMm);
  }
  return (2 * mm2) / 1e6;
};
