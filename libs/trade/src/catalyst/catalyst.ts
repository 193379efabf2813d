import { requireNotNegative, requirePositive } from '../numbers.js';

/** Per cent by mass: kilograms of catalyst per kilogram of resin, times 100 (gel coat maker's booth procedure). */
export const catalystPercentByMass = (catalystKg: number, resinKg: number): number =>
  (requireNotNegative('catalyst', catalystKg) / requirePositive('resin', resinKg)) * 100;

/** Per cent by volume: litres of catalyst per litre of resin, times 100. Another number than per cent by mass. */
export const catalystPercentByVolume = (catalystL: number, resinL: number): number =>
  (requireNotNegative('catalyst', catalystL) / requirePositive('resin', resinL)) * 100;

interface Densities {
  readonly catalystKgPerL: number;
  readonly resinKgPerL: number;
}

/** The per cent by mass that a per cent by volume is, by the densities of both. */
export const massPercentOfVolumePercent = (volumePercent: number, { catalystKgPerL, resinKgPerL }: Densities): number =>
  (requireNotNegative('per cent by volume', volumePercent) *
    requirePositive('density of the catalyst', catalystKgPerL)) /
  requirePositive('density of the resin', resinKgPerL);

/** Catalyst for a mix: grams, and millilitres by its density. */
export interface CatalystDose {
  readonly grams: number;
  readonly millilitres: number;
}

/** Catalyst for resin (kg) at a per cent by mass; the density is the catalyst's, kg/L. */
export const catalystDose = (resinKg: number, percentByMass: number, catalystKgPerL: number): CatalystDose => {
  const grams =
    requirePositive('resin', resinKg) * 1000 * (requireNotNegative('per cent by mass', percentByMass) / 100);
  return { grams, millilitres: grams / requirePositive('density of the catalyst', catalystKgPerL) };
};

/** Millilitres of catalyst per kilogram of resin at a per cent by mass. */
export const millilitresPerKg = (percentByMass: number, catalystKgPerL: number): number =>
  catalystDose(1, percentByMass, catalystKgPerL).millilitres;
