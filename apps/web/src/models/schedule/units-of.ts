import { isUnit, READING_KINDS_OF_THE_SHOP, UNITS, type Dimension, type UnitCode } from '@hull-record/trade';

/** The unit that is put first for each dimension that is read (common practice). */
const FIRST: Partial<Record<Dimension, UnitCode>> = {
  ...{ length: 'mm', hardness: 'Barcol', ratio: '%', time: 'min', temperature: 'C', viscosity: 'mPa.s', mass: 'kg' },
  ...{ pressure: 'mbar', colorDifference: 'dE' },
};

const dimensionOf = (what: string): Dimension | undefined =>
  what in READING_KINDS_OF_THE_SHOP
    ? READING_KINDS_OF_THE_SHOP[what as keyof typeof READING_KINDS_OF_THE_SHOP].dimension
    : undefined;

/** The units that limits of a reading may have. */
export const unitsOf = (what: string): readonly UnitCode[] =>
  (Object.keys(UNITS) as UnitCode[]).filter((unit) => UNITS[unit].dimension === dimensionOf(what));

/** The unit of a reading's limits when another kind is chosen: the one it has if that fits, else the usual one. */
export const unitFor = (what: string, unit: string): string => {
  const dimension = dimensionOf(what);
  if (dimension === undefined || (isUnit(unit) && UNITS[unit].dimension === dimension)) return unit;
  return what === 'wet film' ? 'mil' : (FIRST[dimension] ?? '');
};
