import { TradeError } from './errors.js';
import { dimensionOf, fromSi, toSi, type UnitCode } from './units.js';

/** Two gauge notches do not bound a wet film. Data: `lastWet`, `nextDry`, `unit`. */
export class FilmIntervalInvalid extends TradeError {
  readonly code = 'film-interval-invalid';
}

/** A film thickness of zero, less or no number covers no area. Data: `mil`. */
export class FilmNotPositive extends TradeError {
  readonly code = 'film-not-positive';
}

/** What a notch gauge tells: the film lies in [low, high), in the entered unit and in micrometres. */
export interface FilmInterval {
  readonly recorded: number;
  readonly low: number;
  readonly high: number;
  readonly unit: UnitCode;
  readonly lowUm: number;
  readonly highUm: number;
}

/**
 * The interval a notch gauge bounds: from the last wetted notch up to, but not including, the next dry one.
 *
 * The recorded value is the last wetted notch (practice: read the highest wetted step). A last wet of 0 means that
 * no notch was wetted. Throws FilmIntervalInvalid when the notches are not finite, negative or out of order; when
 * every notch is wet, a larger gauge is needed.
 */
export const filmInterval = (lastWet: number, nextDry: number, unit: UnitCode): FilmInterval => {
  const refuse = (why: string): never => {
    throw new FilmIntervalInvalid(why, { lastWet, nextDry, unit });
  };
  if (dimensionOf(unit) !== 'length') refuse(`A film is a length; "${unit}" is not a unit of length.`);
  if (!Number.isFinite(lastWet) || !Number.isFinite(nextDry)) refuse('Both notches must be numbers.');
  if (lastWet < 0) refuse(`The last wet notch is ${lastWet} ${unit}; a notch is 0 or more.`);
  if (nextDry <= lastWet) {
    refuse(`The next dry notch (${nextDry} ${unit}) must be above the last wet notch (${lastWet} ${unit}).`);
  }
  const um = (value: number): number => fromSi(toSi(value, unit), 'um');
  return { recorded: lastWet, low: lastWet, high: nextDry, unit, lowUm: um(lastWet), highUm: um(nextDry) };
};

interface Steps {
  readonly upTo: number;
  readonly step: number;
}

/** Tab steps of the example gauge in mil (ASTM D4414-95(2020) 7.1.2). */
const MIL_STEPS: readonly Steps[] = [
  { upTo: 6, step: 0.5 },
  { upTo: 10, step: 1 },
  { upTo: 30, step: 2 },
  { upTo: Infinity, step: 5 },
];

/**
 * The same in micrometres. Up to 150 um the standard prints 13 um for half a mil, a rounded figure that real gauges
 * round differently, so any value there passes (step 0). Above 250 um the steps count from 250, above 750 from 750.
 */
const UM_STEPS: readonly Steps[] = [
  { upTo: 150, step: 0 },
  { upTo: 250, step: 25 },
  { upTo: 750, step: 50 },
  { upTo: Infinity, step: 125 },
];

/**
 * Whether a reading can occur on the example gauge of ASTM D4414-95(2020) 7.1.2.
 *
 * Good for a soft warning only: other gauges have other notches. Give the value in the unit read off the gauge;
 * inch units are held to the mil steps, metric units to the micrometre steps. Other dimensions are never on it.
 */
export const onExampleGauge = (value: number, unit: UnitCode): boolean => {
  if (dimensionOf(unit) !== 'length' || !Number.isFinite(value) || value < 0) return false;
  const inches = unit === 'mil' || unit === 'in' || unit === 'ft';
  const reading = fromSi(toSi(value, unit), inches ? 'mil' : 'um');
  const steps = inches ? MIL_STEPS : UM_STEPS;
  const at = steps.findIndex(({ upTo }) => reading <= upTo * (1 + 1e-12));
  const step = steps[at]?.step ?? 0;
  if (step === 0) return true;
  const count = (reading - (steps[at - 1]?.upTo ?? 0)) / step;
  return Math.abs(count - Math.round(count)) < 1e-9;
};

/**
 * Area in square feet that one US gallon covers at a wet film of so many mil, without losses.
 *
 * 231 cubic inches spread one mil thick are 231 * 1000 / 144 = 1604.17 square feet. Throws FilmNotPositive.
 */
export const coverageFt2PerUsGal = (mil: number): number => {
  if (!Number.isFinite(mil) || mil <= 0) {
    throw new FilmNotPositive(`A film of ${mil} mil covers nothing; give a thickness above 0.`, { mil });
  }
  return (231 * 1000) / 144 / mil;
};
