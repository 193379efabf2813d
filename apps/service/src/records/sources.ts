import { CAUTIONS } from '@hull-record/trade';
import type { RecordFacts } from './record-facts.js';
import { defectKind } from './word-values.js';

/** What the paper was judged by, and what it takes for granted: rules kept with readings, then publications. */
export const sourcesOf = ({ readings, hins, defects, nonconformities, madeOf }: RecordFacts): readonly string[] => [
  ...distinct(readings.map(({ rule }) => rule.text)),
  ...(hins.length === 0 ? [] : ['HIN: 33 CFR 181, Subpart C.']),
  ...distinct(defects.map(({ kind }) => `Words for defects: ${defectKind(kind).source}.`)),
  ...(defects.length === 0
    ? []
    : ['Zones along the hull: ICS rules for FRP ships, Sec. 2 (204-206), midship 0.3 L to 0.7 L, ends 0.1 L each.']),
  ...(defects.some(({ grade }) => grade !== null)
    ? ['Blister grades: ASTM D714, written for paints; vocabulary only on gel coat.']
    : []),
  ...(nonconformities.some(({ rule }) => rule === 'expired-lot')
    ? [
        'No batch later than its expiry: LR Rules for the Manufacture, Testing and Certification of Materials, July 2022, Ch 14 Sec 5, 5.3.4.',
      ]
    : []),
  ...(madeOf.throughTank ? ['Assumes well-mixed tanks.'] : []),
];

/** Each once, in the order of the alphabet: that of the rows would be one of ids. */
const distinct = (texts: readonly string[]): readonly string[] => [...new Set(texts)].sort();

/** Cautions for the work that the paper describes, each once; that the data sheet comes first stands last. */
export const cautionsOf = ({ repairs }: RecordFacts): readonly string[] => {
  const lists: readonly (readonly string[])[] =
    repairs.length === 0 ? [CAUTIONS.laminating] : [CAUTIONS.laminating, CAUTIONS.grinding, CAUTIONS.repair];
  const last = new Set(lists.flatMap((list) => list.slice(-1)));
  return [...new Set([...lists.flat().filter((caution) => !last.has(caution)), ...last])];
};
