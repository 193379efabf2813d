import { requirePositive } from './numbers.js';

/** What a gun sprayed into cups in a time: grams of each feed, seconds. */
export interface CaughtAmounts {
  readonly seconds: number;
  readonly resinG?: number | undefined;
  readonly catalystG?: number | undefined;
  readonly glassG?: number | undefined;
}

/** What follows of a timed catch; what was not caught is left out. */
export interface CatchRates {
  readonly kgPerMinute?: number;
  /** Per cent of the resin, by mass. */
  readonly catalystPercent?: number;
  /** Glass of resin and glass, per cent by mass. */
  readonly glassPercent?: number;
}

/**
 * Rates of a timed catch: output of resin, catalyst as per cent of resin by mass, glass content.
 *
 * Per cent from grams caught, as a gel coat maker's booth procedure works it out. Throws NumberInvalid.
 */
export const catchRates = ({ seconds, resinG, catalystG, glassG }: CaughtAmounts): CatchRates => {
  requirePositive('seconds', seconds);
  const resin = resinG === undefined ? undefined : requirePositive('resin', resinG);
  if (resin === undefined) return {};
  return {
    kgPerMinute: (resin * 60) / 1000 / seconds,
    ...(catalystG === undefined ? {} : { catalystPercent: (catalystG * 100) / resin }),
    ...(glassG === undefined ? {} : { glassPercent: (glassG * 100) / (resin + glassG) }),
  };
};
