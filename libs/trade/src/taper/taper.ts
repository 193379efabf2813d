import { requireNotNegative, requirePositive } from '../numbers.js';

/** Smallest taper of a scarf that is asked of structure (resin maker, Epoxyworks 38; tests of 2019 found it best). */
export const LEAST_TAPER_RATIO = 12;

/** Ratios by how loaded the laminate is (handbooks; from memory, confirm for the case). */
export const TAPER_RATIOS = {
  source: 'handbooks (from memory, confirm for the case)',
  values: { light: 8, usual: 12, 'highly loaded': 20 },
} as const;

/** Length of a taper: ratio x thickness, in the unit of the thickness. */
export const taperLength = (thickness: number, ratio: number): number =>
  requirePositive('thickness', thickness) * requirePositive('taper ratio', ratio);

/** Angle of a taper to the surface, degrees. */
export const taperDegrees = (ratio: number): number =>
  (Math.atan(1 / requirePositive('taper ratio', ratio)) * 180) / Math.PI;

/** Length of taper per thickness of a taper as it was ground. */
export const taperRatio = (length: number, thickness: number): number =>
  requireNotNegative('taper length', length) / requirePositive('thickness', thickness);

/** A hole or damage to be patched, mm. A round one has its diameter, any other its length and width. */
export type Damage = { readonly diameterMm: number } | { readonly lengthMm: number; readonly widthMm: number };

/** The ground area: outer size (mm) and area (mm2). Corners of an oblong are rounded with the taper as radius. */
export interface Patch {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly areaMm2: number;
  readonly taperMm: number;
}

/**
 * The patch that covers a damage with a taper all round, on one side.
 *
 * A hole of 100 mm in 6 mm at 12:1 has a patch of 244 mm.
 */
export const patchOf = (damage: Damage, thicknessMm: number, ratio: number): Patch => {
  const taperMm = taperLength(thicknessMm, ratio);
  if ('diameterMm' in damage) {
    const across = requirePositive('diameter', damage.diameterMm) + 2 * taperMm;
    return { lengthMm: across, widthMm: across, areaMm2: (Math.PI / 4) * across ** 2, taperMm };
  }
  const length = requirePositive('length', damage.lengthMm);
  const width = requirePositive('width', damage.widthMm);
  return {
    lengthMm: length + 2 * taperMm,
    widthMm: width + 2 * taperMm,
    areaMm2: length * width + 2 * taperMm * (length + width) + Math.PI * taperMm ** 2,
    taperMm,
  };
};
