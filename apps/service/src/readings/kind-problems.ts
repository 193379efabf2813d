import type { TakeReadings } from '@hull-record/contracts';
import { dimensionOf, onExampleGauge, READING_KINDS_OF_THE_SHOP, toSi, type ReadingKind } from '@hull-record/trade';
import type { FieldError } from '../platform/refusals.js';
import type { ReadKind } from './find-read.js';

/** What this kind of reading cannot be: taken of such a thing, in such a unit, or of such a value. */
export const kindProblems = (of: ReadKind, { what, unit, spots }: TakeReadings): readonly FieldError[] => {
  const { dimension, on, possible = {} }: ReadingKind = READING_KINDS_OF_THE_SHOP[what];
  if (!on.includes(of))
    return [{ pointer: '/what', detail: `${what} is read on a ${on.join(' or ')}, not on a ${of}` }];
  if (dimensionOf(unit) !== dimension)
    return [{ pointer: '/unit', detail: `${what} is not read in ${unit}: give a unit of ${dimension}` }];
  const { min = -Infinity, max = Infinity } = possible;
  return spots.flatMap(({ value, lastWet }, i) => {
    const si = toSi(Number(value ?? lastWet), unit);
    if (si >= min && si <= max) return [];
    const pointer = `/spots/${i}/${value === undefined ? 'lastWet' : 'value'}`;
    return [{ pointer, detail: `${what} cannot be ${value ?? lastWet ?? ''} ${unit}: read it again` }];
  });
};

/** A step that the example gauge of ASTM D4414 does not have is taken, and said. */
export const gaugeWarnings = ({ what, unit, spots }: TakeReadings): readonly string[] =>
  what === 'wet film' && spots.some(({ lastWet }) => lastWet !== undefined && !onExampleGauge(Number(lastWet), unit))
    ? ['A reading is not a step of the example gauge of ASTM D4414: check the gauge.']
    : [];
