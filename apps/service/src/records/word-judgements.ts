import type { NonconformityView } from '@hull-record/paper';
import type { NonconformityRow } from '../platform/views/faults.js';
import type { DispositionRow } from './load-judgements.js';
import type { PlantTime } from '../platform/papers/plant-time.js';
import type { RecordFacts } from './record-facts.js';

/** What was decided, under which concession, why, by whom and when. */
export const wordDisposition = (row: DispositionRow, time: PlantTime): string => {
  const concession = row.concession === null ? '' : ` under concession ${row.concession}`;
  return `${row.disposition}${concession}: ${row.reason.replace(/\.$/, '')} (${row.by}, ${time.at(row.happened_at)})`;
};

/** Nonconformities of a part, or (null) those of the hull and of lots in it, in the order in which they happened. */
export const wordNonconformities = (
  facts: RecordFacts,
  partId: string | null,
  time: PlantTime,
): readonly NonconformityView[] =>
  facts.nonconformities
    .filter((row) => row.part_id === partId)
    .map((row) => ({
      rule: sentence(row.rule.replaceAll('-', ' ')),
      detail: row.detail,
      when: time.at(row.happened_at),
      disposition: decided(facts, row, time),
    }));

const decided = (facts: RecordFacts, { id }: NonconformityRow, time: PlantTime): string | null => {
  const row = facts.dispositions.get(id);
  return row === undefined ? null : wordDisposition(row, time);
};

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** How far who signed is known: a badge that was typed is stated, a sign-in proves. */
export const identity = (kind: string | null): string => IDENTITY[kind ?? 'stated'] ?? 'identity stated, not proved';

const IDENTITY: Readonly<Record<string, string>> = {
  proved: 'identity proved',
  provisional: 'provisional: entered without a PIN and yet to be confirmed, so it does not count',
  refused: 'refused by the person it names: it does not count',
};
