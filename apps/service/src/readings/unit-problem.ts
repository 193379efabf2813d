import type { TakeReadings } from '@hull-record/contracts';
import { dimensionOf, onExampleGauge } from '@hull-record/trade';
import type { FieldError } from '../platform/refusals.js';

/** What each kind of reading is a quantity of. */
const DIMENSION: Readonly<Record<TakeReadings['what'], readonly string[]>> = {
  'wet film': ['length'],
  'Barcol hardness': ['hardness'],
  thickness: ['length'],
  catalyst: ['ratio'],
  'gel time': ['time'],
  'bond gap': ['length'],
};

/** A unit that this kind of reading cannot have. */
export const unitProblem = ({ what, unit }: TakeReadings): readonly FieldError[] =>
  (DIMENSION[what] ?? []).includes(dimensionOf(unit))
    ? []
    : [
        {
          pointer: '/unit',
          detail: `${what} is not read in ${unit}: give a unit of ${(DIMENSION[what] ?? []).join(' or ')}`,
        },
      ];

/** A step that the example gauge of ASTM D4414 does not have is taken, and said. */
export const gaugeWarnings = ({ what, unit, spots }: TakeReadings): readonly string[] =>
  what === 'wet film' && spots.some(({ lastWet }) => lastWet !== undefined && !onExampleGauge(Number(lastWet), unit))
    ? ['A reading is not a step of the example gauge of ASTM D4414: check the gauge.']
    : [];
