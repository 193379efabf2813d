import type { Charted } from '@hull-record/contracts';
import { dimensionOf, READING_KINDS_OF_THE_SHOP, type ReadingKind, type UnitCode } from '@hull-record/trade';
import { InvalidRequest } from '../platform/refusals.js';
import type { HullRow } from './load-hulls.js';

/** The unit of what has no reading yet; a margin is a difference of temperature, in kelvin, and has no other. */
export const UNITS_AT_FIRST: Partial<Readonly<Record<Charted, UnitCode>>> = {
  ...{ 'air temperature': 'C', 'mold temperature': 'C', 'relative humidity': '%', 'surface above dew point': 'K' },
  ...{ 'wet film': 'mil', thickness: 'mm', 'Barcol hardness': 'Barcol', catalyst: '%' },
};

/**
 * The unit of a chart: the one asked for, or that of the newest reading.
 *
 * @throws InvalidRequest when what is charted is not read in the unit asked for
 */
export const unitOf = (what: Charted, hulls: readonly HullRow[], asked?: UnitCode): UnitCode => {
  const own = hulls.at(-1)?.spots.at(-1)?.unit ?? UNITS_AT_FIRST[what] ?? '1';
  if (asked === undefined) return own;
  const isMargin = what === 'surface above dew point';
  if (isMargin ? asked !== own : dimensionOf(asked) !== dimensionFor(what, own))
    throw new InvalidRequest([{ pointer: '/unit', detail: `${what} is not read in ${asked}` }]);
  return asked;
};

const dimensionFor = (what: Charted, own: UnitCode): string => {
  const kinds: Readonly<Record<string, ReadingKind>> = READING_KINDS_OF_THE_SHOP;
  return kinds[what]?.dimension ?? dimensionOf(own);
};
