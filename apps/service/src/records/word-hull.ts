import type { HinView, JointView, LifeFactView } from '@hull-record/paper';
import { decodeHin, HIN_PLACEMENT, type ValidHin } from '@hull-record/trade';
import type { LifeRow } from './load-hull.js';
import type { PlantTime } from '../platform/papers/plant-time.js';
import type { RecordFacts } from './record-facts.js';
import { wordUsed } from './word-used.js';

const MONTHS = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August'],
  ...['September', 'October', 'November', 'December'],
] as const;

/** The HIN that the hull has, and what its characters say. */
export const wordHin = ({ hins }: RecordFacts): HinView | null => {
  const text = hins.at(-1)?.as_printed;
  if (text === undefined) return null;
  const reading = decodeHin(text);
  const { primary, secondary, source } = HIN_PLACEMENT;
  return {
    text,
    decoded: reading.valid ? wordDecoded(reading) : reading.problems.map(({ message }) => message),
    placement: `Primary: ${primary} Secondary: ${secondary} (${source})`,
  };
};

const wordDecoded = (hin: ValidHin): readonly string[] => [
  ...(hin.country === undefined ? [] : [`country ${hin.country} (ISO 10087)`]),
  `manufacturer code ${hin.mic}, serial ${hin.serial}`,
  `certified or manufactured in ${MONTHS[hin.buildMonth - 1] ?? ''} ${hin.buildYear}`,
  ...(hin.modelYear === undefined ? [] : [`model year ${hin.modelYear}`]),
  ...hin.warnings.map((warning) => `Doubt: ${warning}`),
];

/** What happened in the life of the hull, with the HINs it was assigned, in the order in which it happened. */
export const wordLife = ({ life, hins }: RecordFacts, time: PlantTime): readonly LifeFactView[] =>
  [
    ...life.map((row) => ({ at: row.happened_at, what: row.what, whereBy: whereOf(row) })),
    ...hins.map((row) => ({
      at: row.happened_at,
      what: `HIN ${row.as_printed} assigned`,
      whereBy: [row.by, ...(row.reason === null ? [] : [row.reason])].join('; '),
    })),
  ]
    .sort((a, b) => a.at.getTime() - b.at.getTime())
    .map(({ at, ...fact }) => ({ when: time.at(at), ...fact }));

const whereOf = ({ dealer, dealer_place, note, by }: LifeRow): string =>
  [
    ...(dealer === null ? [] : [dealer_place === null ? dealer : `${dealer}, ${dealer_place}`]),
    ...(note === null ? [] : [note]),
    by,
  ].join('; ');

/** How parts were joined to the hull; its hull molding is the hull, and joined to nothing. */
export const wordJoints = (facts: RecordFacts, time: PlantTime): readonly JointView[] =>
  facts.joints
    .filter(({ id, kind }) => kind !== 'hull molding' || facts.used.some((row) => row.into_id === id))
    .map((row) => ({
      what: `${row.kind.charAt(0).toUpperCase()}${row.kind.slice(1)} to hull`,
      parts: `${row.part} to hull ${facts.hull.number}`,
      when: time.at(row.happened_at),
      doneBy: row.done_by,
      enteredBy: row.entered_by,
      used: wordUsed(facts, row.id),
      readings: [],
      note: null,
    }));
