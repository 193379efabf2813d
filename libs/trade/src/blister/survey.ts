import { requireNotNegative, requirePositive } from '../numbers.js';

/** A survey of the wetness of a hull ashore. Readings of moisture meters are relative: none becomes per cent of water. */
export interface WetnessSurvey {
  readonly hoursAshore: number;
  readonly readings: number;
  readonly lengthM: number;
  /** Area surveyed, when it is known. */
  readonly areaM2?: number | undefined;
}

/** A hull is ashore so long before it is read (code of practice on the wetness of FRP hulls, 1998, as quoted). */
const HOURS_ASHORE = 24;

/** Readings that a boat of 35 ft and more has at least: 50 to 100 on 35 to 40 ft (same, as quoted). */
const READINGS_OF_A_LARGE_BOAT = { fromM: 10.668, atLeast: 50 } as const;

/**
 * What speaks against a survey: too early ashore, or fewer readings than practice asks (about one a square metre).
 *
 * Code of Practice for the Measurement and Analysis of the Wetness of FRP Hulls (1998), as quoted by others.
 */
export const surveyDoubts = ({ hoursAshore, readings, lengthM, areaM2 }: WetnessSurvey): readonly string[] => {
  requireNotNegative('hours ashore', hoursAshore);
  requireNotNegative('readings', readings);
  const byLength =
    requirePositive('length', lengthM) >= READINGS_OF_A_LARGE_BOAT.fromM ? READINGS_OF_A_LARGE_BOAT.atLeast : 0;
  const asked = Math.max(byLength, areaM2 === undefined ? 0 : Math.ceil(requirePositive('area', areaM2)));
  return [
    ...(hoursAshore < HOURS_ASHORE ? [`Read ${hoursAshore} h ashore: too early; ${HOURS_ASHORE} h at least.`] : []),
    ...(readings < asked ? [`${readings} readings: practice asks about ${asked}.`] : []),
  ];
};

/**
 * Where a blister may come from by its looks: a hint for where to look, no finding.
 *
 * Flat, round and up to 1 mm: between coats; larger and irregular: below the gel coat (barrier-coat tests, University of
 * Rhode Island, Chemical Engineering faculty paper 413).
 */
export const blisterHint = (
  diameterMm: number,
  shape: 'round' | 'irregular',
): 'between coats' | 'below the gel coat' =>
  requirePositive('diameter', diameterMm) <= 1 && shape === 'round' ? 'between coats' : 'below the gel coat';
