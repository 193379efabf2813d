import { TradeError } from './errors.js';

/** A unit of areal mass that may be one of two. Data: `unit`. */
export class ArealMassAmbiguous extends TradeError {
  readonly code = 'areal-mass-ambiguous';
}

/** A text that names no unit of areal mass. Data: `unit`. */
export class ArealMassUnitUnknown extends TradeError {
  readonly code = 'areal-mass-unit-unknown';
}

const NAMES = {
  'g/m2': ['g/m2', 'g/m²', 'gsm'],
  'kg/m2': ['kg/m2', 'kg/m²'],
  'oz/ft2': ['oz/ft2', 'oz/ft²', 'oz/sq ft'],
  'oz/yd2': ['oz/yd2', 'oz/yd²', 'oz/sq yd'],
} as const;

/** A unit of areal mass. */
export type ArealMassUnit = keyof typeof NAMES;

/** Every unit of areal mass, as stored and sent. */
export const AREAL_MASS_UNITS = Object.keys(NAMES) as [ArealMassUnit, ...ArealMassUnit[]];

/**
 * Reads the unit of an areal mass as people write it.
 *
 * A bare "oz" is refused: mat is sold by the square foot, woven and stitched glass by the square yard, and they differ
 * ninefold (1.5 oz/ft2 is 458 g/m2, 24 oz/yd2 is 814 g/m2). Throws ArealMassAmbiguous, ArealMassUnitUnknown.
 */
export const readArealMassUnit = (text: string): ArealMassUnit => {
  const unit = text.trim().toLowerCase();
  if (/^(oz|ounces?)\.?$/.test(unit))
    throw new ArealMassAmbiguous('Which ounce: oz/ft2, as mat is sold, or oz/yd2, as cloth is?', { unit: text });
  const found = (Object.keys(NAMES) as ArealMassUnit[]).find((name) =>
    (NAMES[name] as readonly string[]).includes(unit),
  );
  if (found === undefined)
    throw new ArealMassUnitUnknown(`"${text}" is no areal mass: write g/m2, kg/m2, oz/ft2 or oz/yd2.`, { unit: text });
  return found;
};
