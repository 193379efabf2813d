import type { EquipmentCheckLine, EquipmentRecallView, RecalledView, RecallWindowView } from '@hull-record/paper';
import type { PlantTime } from '../../../platform/papers/plant-time.js';
import { wordDisposition } from '../../word-judgements.js';
import { inline, limits, reading, unit } from '../../word-values.js';
import { sentence, wordPaper } from '../../../platform/papers/word-paper.js';
import type { DoneRow } from './done-with.js';
import type { CheckRow, RecallFacts } from './recall-facts.js';

const SOURCE =
  'ISO 9001:2015 7.1.5.2: when measuring equipment is found unfit for its purpose, it is determined whether previous ' +
  'results were adversely affected, and action is taken as necessary.';

/** Words the recall list of a piece of equipment. */
export const wordRecall = (facts: RecallFacts): EquipmentRecallView => {
  const { equipment, checks, windows } = facts;
  const { paper, time } = wordPaper(facts.plant, facts.newest, null);
  return {
    ...paper,
    equipment: equipment.code,
    kind: equipment.kind,
    description: equipment.description,
    checks: checks.map((check) => wordCheck(facts, check, time)),
    windows: windows.map((window) => wordWindow(facts, window, time)),
    source: SOURCE,
  };
};

const wordCheck = (facts: RecallFacts, check: CheckRow, time: PlantTime): EquipmentCheckLine => {
  // A per cent worked out of grams has the noise of arithmetic in its last digits.
  const figure = check.value === null ? null : Number(check.value.toPrecision(6));
  const value = figure === null ? [] : [`${figure} ${check.unit === null ? '' : unit(check.unit)}`.trim()];
  const allowed = check.limits === null ? [] : [`limits ${limits(check.limits)}`];
  return {
    when: time.at(check.happened_at),
    what: sentence(check.what),
    found: [...value, ...allowed].join('; ') || 'no value recorded',
    ...{ good: check.good, by: check.by },
    note:
      [
        ...(check.certificate === null ? [] : [`certificate ${check.certificate}`]),
        ...(check.note === null ? [] : [check.note]),
      ].join('; ') || null,
    disposition: decidedOf(facts, check.id, time),
  };
};

const wordWindow = (
  facts: RecallFacts,
  { what, lastGood, bad, nextGood, done }: RecallFacts['windows'][number],
  time: PlantTime,
): RecallWindowView => ({
  what,
  opens:
    lastGood === null
      ? 'with the first use of it: no good check is recorded before'
      : `after the last good check, ${time.at(lastGood.happened_at)}`,
  foundBad: bad.map(({ happened_at, by }) => `${time.at(happened_at)}, by ${by}`).join('; '),
  closes:
    nextGood === null
      ? 'not yet: it was not found good since'
      : `before the next good check, ${time.at(nextGood.happened_at)}`,
  readings: done.filter(({ kind }) => kind === 'reading').map((row) => wordDone(facts, row, settled(facts, bad), time)),
  drawn: done.filter(({ kind }) => kind === 'drawn').map((row) => wordDone(facts, row, settled(facts, bad), time)),
});

const wordDone = (facts: RecallFacts, row: DoneRow, settled: boolean, time: PlantTime): RecalledView => ({
  part: row.part ?? 'of no part',
  hull: row.hull ?? 'in no hull',
  place: row.spot === null ? row.place : `${row.place}, spot ${row.spot}`,
  what: sentence(row.what),
  value: inline(reading(row)),
  when: time.at(row.happened_at),
  by: row.by,
  disposition: decidedOf(facts, row.id, time) ?? (settled ? 'with its check: use as is' : null),
});

/** What was done in a window is settled with it when every bad check of it was. */
const settled = ({ dispositions }: RecallFacts, bad: readonly CheckRow[]): boolean =>
  bad.every(({ id }) => dispositions.get(id)?.disposition === 'use as is');

const decidedOf = ({ dispositions }: RecallFacts, id: string, time: PlantTime): string | null => {
  const decided = dispositions.get(id);
  return decided === undefined ? null : wordDisposition(decided, time);
};
