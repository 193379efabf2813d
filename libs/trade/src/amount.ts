import { dimensionOf, toSi, type UnitCode } from './units.js';

/** What a material's own data says about turning litres, areas and pieces into kilograms; each must be positive. */
export interface MaterialConversions {
  readonly densityKgPerL?: number | undefined;
  readonly arealMassKgPerM2?: number | undefined;
  readonly pieceMassKg?: number | undefined;
}

/** Kilograms, or what keeps the amount from becoming kilograms. */
export type Kilograms =
  { readonly kg: number } | { readonly missing: 'density' | 'areal mass' | 'piece mass' | 'not an amount' };

/**
 * Converts an amount of a material to kilograms, without rounding.
 *
 * Mass needs nothing; volume needs the density, area the areal mass, pieces the mass of one piece.
 * The sign is kept, because a measured tank heel may book a loss or a gain. A quantity that is no finite number,
 * or a unit of another dimension, is "not an amount"; a conversion that is zero or negative counts as missing.
 */
export const toKilograms = (quantity: number, unit: UnitCode, conversions: MaterialConversions): Kilograms => {
  if (!Number.isFinite(quantity)) return { missing: 'not an amount' };
  const si = toSi(quantity, unit);
  switch (dimensionOf(unit)) {
    case 'mass':
      return { kg: si };
    case 'volume':
      return times(si * 1000, conversions.densityKgPerL, 'density');
    case 'area':
      return times(si, conversions.arealMassKgPerM2, 'areal mass');
    case 'count':
      return times(si, conversions.pieceMassKg, 'piece mass');
    default:
      return { missing: 'not an amount' };
  }
};

const times = (
  quantity: number,
  kgPer: number | undefined,
  name: 'density' | 'areal mass' | 'piece mass',
): Kilograms =>
  kgPer !== undefined && Number.isFinite(kgPer) && kgPer > 0 ? { kg: quantity * kgPer } : { missing: name };
