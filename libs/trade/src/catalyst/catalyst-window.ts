import { isBelow, NumberInvalid, requireFinite, requirePositive } from '../numbers.js';

/** Between which per cent by mass a material is catalysed; of its data sheet. */
export interface CatalystWindow {
  readonly minPercent: number;
  readonly maxPercent: number;
  readonly source: string;
}

/** A typical window for gel coat, from a supplier's guide; a material's own data comes before it. */
export const TYPICAL_GEL_COAT_WINDOW: CatalystWindow = {
  minPercent: 1.2,
  maxPercent: 3,
  source: 'gel coat supplier guide (1.2 to 3 %; 1.8 % at 77 F); the data sheet of the material comes first',
};

export interface CatalystVerdict {
  readonly verdict: 'inside' | 'too little' | 'too much' | 'cannot be judged';
  readonly percentByMass: number;
  readonly source: string;
}

/** Judges a per cent by mass, never rounded, both ends of the window included. */
export const judgeCatalyst = (percentByMass: number, window: CatalystWindow): CatalystVerdict => {
  const { minPercent, maxPercent, source } = window;
  const known = [percentByMass, minPercent, maxPercent].every(Number.isFinite) && minPercent <= maxPercent;
  if (!known || percentByMass < 0) return { verdict: 'cannot be judged', percentByMass, source };
  if (isBelow(percentByMass, minPercent)) return { verdict: 'too little', percentByMass, source };
  return { verdict: isBelow(maxPercent, percentByMass) ? 'too much' : 'inside', percentByMass, source };
};

/** Per cent by mass that a data sheet names at a temperature. */
export interface DoseAt {
  readonly temperatureC: number;
  readonly percentByMass: number;
}

/**
 * Per cent by mass at a temperature (C), in a straight line between the two rows of a data sheet around it.
 *
 * A sheet says nothing outside its rows: null there. Throws NumberInvalid on rows that are no numbers or name one
 * temperature twice.
 */
export const percentAtTemperature = (sheet: readonly DoseAt[], temperatureC: number): number | null => {
  const rows = [...sheet].sort((a, b) => a.temperatureC - b.temperatureC);
  rows.forEach((row, i) => {
    requirePositive('per cent by mass', row.percentByMass);
    if (rows[i - 1]?.temperatureC === requireFinite('temperature', row.temperatureC))
      throw new NumberInvalid('temperature', row.temperatureC, 'named once in the sheet');
  });
  const upper = rows.findIndex((row) => row.temperatureC >= requireFinite('temperature', temperatureC));
  const above = rows[upper];
  if (above === undefined) return null;
  if (above.temperatureC === temperatureC) return above.percentByMass;
  const below = rows[upper - 1];
  if (below === undefined) return null;
  const along = (temperatureC - below.temperatureC) / (above.temperatureC - below.temperatureC);
  return below.percentByMass + along * (above.percentByMass - below.percentByMass);
};
