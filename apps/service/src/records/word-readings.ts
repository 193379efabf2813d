import type { ReadingsView, ReadingView } from '@hull-record/paper';
import { fromSi, toSi, type UnitCode } from '@hull-record/trade';
import type { ReadingRow } from '../platform/views/making.js';
import type { PlantTime } from '../platform/papers/plant-time.js';
import type { RecordFacts } from './record-facts.js';
import { wordDisposition } from './word-judgements.js';
import { limits, place, reading, stacked, unit } from './word-values.js';

/** The readings of a layer or repair, those judged by one rule and taken with one gauge together, spot by spot. */
export const wordReadings = (
  facts: Pick<RecordFacts, 'readings' | 'dispositions'>,
  placeId: string,
  time: PlantTime,
): readonly ReadingsView[] => {
  const groups = new Map<string, ReadingRow[]>();
  for (const row of facts.readings.filter(({ of_id }) => of_id === placeId).sort(bySpot)) {
    const key = JSON.stringify([row.what, row.rule.limits, row.rule.text, row.equipment]);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()].map((rows) => wordGroup(facts, rows, time));
};

const bySpot = (a: ReadingRow, b: ReadingRow): number =>
  (a.what < b.what ? -1 : a.what > b.what ? 1 : 0) ||
  a.spot - b.spot ||
  a.happened_at.getTime() - b.happened_at.getTime() ||
  Number(a.value) - Number(b.value) ||
  (a.root < b.root ? -1 : 1);

const wordGroup = (
  facts: Pick<RecordFacts, 'dispositions'>,
  rows: readonly ReadingRow[],
  time: PlantTime,
): ReadingsView => {
  const [{ what, rule, equipment }] = rows as [ReadingRow];
  return {
    what: what.charAt(0).toUpperCase() + what.slice(1),
    limits: rule.limits === null ? 'none set' : limits(rule.limits),
    rule: rule.text.replace(/\.$/, ''),
    equipment: equipment ?? 'not recorded',
    ...plotOf(rows),
    rows: rows.map((row) => wordReading(facts, row, time)),
  };
};

/** Readings as numbers on one line, when there are several and they are in the unit of their limits, or in one. */
const plotOf = (rows: readonly ReadingRow[]): Pick<ReadingsView, 'plot'> => {
  const [{ rule, unit: code }] = rows as [ReadingRow];
  if (rows.length < 2 || rows.some((row) => row.unit !== code)) return {};
  const { min, max, unit: of } = rule.limits ?? { unit: code };
  const inUnit = (limit: number | undefined): number | undefined =>
    limit === undefined ? undefined : Number(fromSi(toSi(limit, of as UnitCode), code as UnitCode).toPrecision(4));
  const points = rows.map(({ value, verdict }) => ({ value: Number(value), verdict: verdictOf(verdict) }));
  return { plot: { unit: unit(code), min: inUnit(min), max: inUnit(max), points } };
};

const wordReading = (facts: Pick<RecordFacts, 'dispositions'>, row: ReadingRow, time: PlantTime): ReadingView => {
  const decided = facts.dispositions.get(row.root);
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
