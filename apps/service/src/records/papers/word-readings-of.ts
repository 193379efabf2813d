import type { ReadingsView, ReadingView } from '@hull-record/paper';
import type { ReadingRow } from '../../platform/views/making.js';
import type { DispositionRow } from '../load-judgements.js';
import type { PlantTime } from '../plant-time.js';
import { wordDisposition } from '../word-judgements.js';
import { limits, place, reading, stacked } from '../word-values.js';
import { sentence } from './word-paper.js';

/** Readings with what was decided about each, by its root. */
export interface Judged {
  readonly readings: readonly ReadingRow[];
  readonly dispositions: ReadonlyMap<string, DispositionRow>;
}

/** The readings of one thing, those judged by one rule and taken with one gauge together, spot by spot. */
export const wordReadingsOf = (
  { readings, dispositions }: Judged,
  id: string,
  time: PlantTime,
): readonly ReadingsView[] => {
  const groups = new Map<string, ReadingRow[]>();
  for (const row of readings.filter(({ of_id }) => of_id === id)) {
    const key = JSON.stringify([row.what, row.rule.limits, row.rule.text, row.equipment]);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()].map((rows) => ({
    ...headOf(rows as [ReadingRow]),
    rows: rows.map((row) => wordReading(row, dispositions.get(row.root), time)),
  }));
};

const headOf = ([{ what, rule, equipment }]: readonly [ReadingRow]): Omit<ReadingsView, 'rows'> => ({
  what: sentence(what),
  limits: rule.limits === null ? 'none set' : limits(rule.limits),
  rule: rule.text.replace(/\.$/, ''),
  equipment: equipment ?? 'not recorded',
});

const wordReading = (row: ReadingRow, decided: DispositionRow | undefined, time: PlantTime): ReadingView => {
  const notes = [
    ...(row.crosses_limit ? ['the gauge interval reaches across a limit'] : []),
    ...(row.suspect ? ['suspect: the equipment may have been unfit then'] : []),
    ...(decided === undefined ? [] : [wordDisposition(decided, time)]),
    ...(row.id === row.root ? [] : ['corrected']),
  ];
  return {
    spot: String(row.spot),
    value: stacked(reading(row)),
    place: row.place === null ? 'not recorded' : place(row.place),
    verdict: verdictOf(row.verdict),
    byWhen: `${row.by}, ${time.at(row.happened_at)}`,
    ...(notes.length === 0 ? {} : { note: notes.join('; ') }),
  };
};

const VERDICTS: readonly ReadingView['verdict'][] = ['inside', 'outside', 'cannot be judged', 'no limit'];

const verdictOf = (text: string): ReadingView['verdict'] =>
  VERDICTS.find((verdict) => verdict === text) ?? 'cannot be judged';
