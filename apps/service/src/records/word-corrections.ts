import type { CorrectionView } from '@hull-record/paper';
import type { CorrectionRow, Version } from './load-corrections.js';
import type { PlantTime } from '../platform/papers/plant-time.js';
import { valuesOf, type Form } from './versions.sql.js';
import { amount, climate, count, decimal, defectKind, inline, place, reading } from './word-values.js';

/** Every correction with what was, what is, why and by whom, oldest first. */
export const wordCorrections = (rows: readonly CorrectionRow[], time: PlantTime): readonly CorrectionView[] =>
  rows.map((row) => ({
    when: time.at(row.happened_at),
    what: row.before.subject,
    before: differing(row, row.before, time),
    after: row.after === null ? withdrawn(row) : differing(row, row.after, time),
    reason: row.reason,
    by: row.by,
  }));

/** The corrections that touch one layer, joint or repair, a sentence each. */
export const wordCorrectionsOf = (
  rows: readonly CorrectionRow[],
  placeId: string,
  time: PlantTime,
): readonly string[] =>
  rows
    .filter((row) => row.place === placeId)
    .map((row) => {
      const was = differing(row, row.before, time);
      const is = row.after === null ? withdrawn(row) : `now ${differing(row, row.after, time)}`;
      return `${row.before.subject}: was ${was}; ${is} (${row.by}, ${time.at(row.happened_at)})`;
    });

/** The values of a version that the correction changed; all there are when it was withdrawn. */
const differing = ({ table, before, after }: CorrectionRow, version: Version, time: PlantTime): string => {
  const changed = valuesOf(table).flatMap(({ label, form }, i) => {
    const [was, is] = [before.values[i] ?? null, after?.values[i] ?? null];
    const prints = after === null ? was !== null : JSON.stringify(was) !== JSON.stringify(is);
    return prints ? [`${label} ${wordValue(form, version.values[i] ?? null, time)}`] : [];
  });
  return changed.length === 0 ? 'as it is' : changed.join('; ');
};

const wordValue = (form: Form, value: unknown, time: PlantTime): string =>
  value === null ? 'none' : FORMS[form](value as never, time);

const FORMS: Readonly<Record<Form, (value: never, time: PlantTime) => string>> = {
  text: (value: string) => value,
  instant: (value: string, time) => time.at(new Date(value)),
  amount: (value: Parameters<typeof amount>[0] & { basis: string }) => `${inline(amount(value))}, ${value.basis}`,
  place,
  climate: (value: Parameters<typeof climate>[0]) => climate(value) ?? 'none',
  'defect kind': (value: string) => defectKind(value).label,
  millimetres: (value: number) => `${decimal(value, 1)} mm`,
  reading: (value: Parameters<typeof reading>[0]) => inline(reading(value)),
};

const NAMES: Readonly<Record<string, string>> = { used: 'use', lot_input: 'input', lot_state: 'state' };

const withdrawn = ({ along }: CorrectionRow): string => {
  const tables = [...new Set(along)].sort();
  const counts = tables.map((table) => count(along.filter((one) => one === table).length, NAMES[table] ?? table));
  return counts.length === 0 ? 'withdrawn' : `withdrawn, and with it ${counts.join(', ')}`;
};
