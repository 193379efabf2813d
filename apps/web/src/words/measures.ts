import { dimensionOf, fromSi, isUnit, toSi, type UnitCode } from '@hull-record/trade';
import type { Units } from '../preferences/preferences.js';

/** The unit a figure is wished in, when that is another than it was entered in; null when it stays as it is. */
export const wishedUnit = (unit: string, units: Units): UnitCode | null => {
  const wished = isUnit(unit) ? wishOf(unit, units) : null;
  return wished === unit || wished === 'recorded' ? null : wished;
};

/** Film is what goes by mil or micrometre; a thickness in millimetres is none. An ounce or gram is small on purpose. */
const wishOf = (unit: UnitCode, { film, temperature, mass }: Units): UnitCode | 'recorded' | null => {
  if (unit === 'mil' || unit === 'um') return film;
  if (unit === 'kg' || unit === 'lb') return mass;
  return dimensionOf(unit) === 'temperature' ? temperature : null;
};

/** A value in another unit of the same dimension, not rounded. */
export const converted = (value: number, from: UnitCode, to: UnitCode): number => fromSi(toSi(value, from), to);
