import type { EntityManager } from 'typeorm';
import { standing } from '../../../platform/facts/standing.js';
import { InvalidRequest } from '../../../platform/refusals.js';
import { loadDefects, type DefectRow } from '../../../platform/views/faults.js';
import { loadLayerRecords, loadUsed, NOW, type PartRow } from '../../../platform/views/making.js';
import { loadVerdicts } from '../../../platform/views/verdicts.js';
import { loadDispositions, type MaterialRow } from '../../load-judgements.js';
import { loadMadeOf } from '../../load-made-of.js';
import { findPart } from '../find-part.js';
import { loadNewestOfPart } from '../newest-of-part.js';

/** Everything that a repair order words, as rows. */
export type RepairOrderFacts = Awaited<ReturnType<typeof loadRepairOrder>>;

/**
 * Loads defects of a part, and the laminate they are in.
 *
 * @param number number or id of the part
 * @param asked marks or ids of defects; all that are open when left out
 * @param tx one transaction that sees one moment
 * @throws NotThere
 * @throws InvalidRequest
 */
export const loadRepairOrder = async (tx: EntityManager, number: string, asked: readonly string[] | undefined) => {
  const found = await findPart(tx, number);
  const { part } = found;
  const defects = chosen(await loadDefects(tx, { parts: [part.id] }, NOW), part, asked);
  const ids = defects.map((row) => row.id);
  const records = await loadLayerRecords(tx, [part.id], NOW);
  const used = await loadUsed(
    tx,
    records.map(({ root }) => root),
    NOW,
  );
  const lots = used.map((row) => row.lot_id);
  return {
    ...{ found, all: asked === undefined, defects, records, used },
    madeOf: await loadMadeOf(tx, lots, NOW),
    materials: await materialsOf(tx, part),
    verdicts: await loadVerdicts(tx, ids, NOW),
    dispositions: await loadDispositions(tx, ids, NOW),
    newest: await loadNewestOfPart(tx, part.id, lots),
  };
};

const chosen = (
  all: readonly DefectRow[],
  part: PartRow,
  asked: readonly string[] | undefined,
): readonly DefectRow[] => {
  if (asked === undefined) return all.filter(({ state }) => state === 'open');
  const named = (name: string) => (row: DefectRow) => row.mark === name.toUpperCase() || row.id === name.toLowerCase();
  const missing = asked.flatMap((name, i) =>
    all.some(named(name))
      ? []
      : [
          {
            pointer: `/defect/${i}`,
            detail: `Part ${part.number} has no defect ${name}: give a mark such as D1, or its id.`,
          },
        ],
  );
  if (missing.length > 0) throw new InvalidRequest(missing);
  return all.filter((row) => asked.some((name) => named(name)(row)));
};

/** The materials that the schedule names, by code. */
const materialsOf = async (tx: EntityManager, part: PartRow): Promise<ReadonlyMap<string, MaterialRow>> => {
  const codes = part.layers.flatMap(({ materials }) => materials.map(({ material }) => material));
  const rows = await tx.query<MaterialRow[]>(
    `select m.code, m.name, m.role from fact.material m join fact.part p on p.plant_id = m.plant_id
     where p.id = $1 and m.code = any($2) and ${standing('m')}`,
    [part.id, codes],
  );
  return new Map(rows.map((row) => [row.code, row]));
};
