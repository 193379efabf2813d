import type { EntityManager } from 'typeorm';
import { standing } from '../../../platform/facts/standing.js';
import { loadDefects, loadNonconformities } from '../../../platform/views/faults.js';
import { loadLayerRecords, loadReadings, NOW } from '../../../platform/views/making.js';
import { loadVerdicts } from '../../../platform/views/verdicts.js';
import { loadDispositions } from '../../load-judgements.js';
import { findPart } from '../find-part.js';
import { loadNewestOfPart } from '../newest-of-part.js';

/** Everything that the sheet of hold points words, as rows. */
export type HoldPointFacts = Awaited<ReturnType<typeof loadHoldPoints>>;

/**
 * Loads the layers of a part with their readings and verdicts, and what is wrong with the part.
 *
 * @param number number or id of the part
 * @param tx one transaction that sees one moment
 * @throws NotThere
 */
export const loadHoldPoints = async (tx: EntityManager, number: string) => {
  const found = await findPart(tx, number);
  const { id } = found.part;
  const records = await loadLayerRecords(tx, [id], NOW);
  const roots = records.map(({ root }) => root);
  const readings = await loadReadings(tx, roots, NOW);
  const defects = await loadDefects(tx, { parts: [id] }, NOW);
  const nonconformities = await loadNonconformities(tx, [id], NOW);
  const about = [...readings.map(({ root }) => root), ...[...defects, ...nonconformities].map((row) => row.id)];
  return {
    ...{ found, records, readings, defects, nonconformities },
    aboutLayer: await layersOfNonconformities(tx, id),
    verdicts: await loadVerdicts(tx, [...roots, ...defects.map((row) => row.id)], NOW),
    dispositions: await loadDispositions(tx, about, NOW),
    newest: await loadNewestOfPart(tx, id),
  };
};

/** The layer record that each nonconformity of a part is about, by its root; those about something else are missing. */
const layersOfNonconformities = async (tx: EntityManager, partId: string): Promise<ReadonlyMap<string, string>> => {
  const rows = await tx.query<{ root: string; about_id: string }[]>(
    `select c.root, c.about_id from fact.nonconformity c
     where c.part_id = $1 and c.about_kind = 'layer' and ${standing('c')}`,
    [partId],
  );
  return new Map(rows.map((row) => [row.root, row.about_id]));
};
