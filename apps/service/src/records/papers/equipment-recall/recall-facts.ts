import type { EntityManager } from 'typeorm';
import { standing } from '../../../platform/facts/standing.js';
import { uuidOrNull } from '../../../platform/lookups/uuid-or-null.js';
import { NotThere } from '../../../platform/refusals.js';
import { NOW } from '../../../platform/views/making.js';
import { loadDispositions } from '../../load-judgements.js';
import type { PrintedLimits } from '../../word-values.js';
import { plantOf } from '../../../platform/papers/plant-of.js';
import { loadDoneWith } from './done-with.js';
import { loadNewestOfRecall } from './newest-of-recall.js';
import { isWithin, windowsOf, type Check } from './windows.js';

/** Everything that a recall list words, as rows. */
export type RecallFacts = Awaited<ReturnType<typeof loadRecall>>;

/** A check of equipment as it was recorded. */
export interface CheckRow extends Check {
  readonly id: string;
  readonly value: number | null;
  readonly unit: string | null;
  readonly limits: PrintedLimits | null;
  readonly certificate: string | null;
  readonly note: string | null;
  readonly by: string;
}

const CHECKS = `
  select k.root as id, k.what, k.value, k.unit, k.limits, k.good, k.certificate, k.note, w.badge as by, k.happened_at
  from fact.equipment_check k join fact.journal e on e.id = k.entry_id join fact.person w on w.id = e.person_id
  where k.equipment_id = $1 and ${standing('k')} order by k.happened_at, k.recorded_at, k.id`;

interface EquipmentRow {
  readonly id: string;
  readonly version: string;
  readonly code: string;
  readonly kind: string;
  readonly description: string;
}

const EQUIPMENT = `
  select q.root as id, q.id as version, q.code, q.kind, q.description from fact.equipment q
  where (q.code = $1 or q.root = ${uuidOrNull('$1::text')}) and ${standing('q')} order by q.recorded_at limit 1`;

/**
 * Loads the checks of a piece of equipment, and what was done with it in each time in which it may have been unfit.
 *
 * @param name code or id
 * @param tx one transaction that sees one moment
 * @throws NotThere
 */
export const loadRecall = async (tx: EntityManager, name: string) => {
  const [equipment] = await tx.query<EquipmentRow[]>(EQUIPMENT, [name]);
  if (!equipment) throw new NotThere('equipment', name);
  const checks = await tx.query<CheckRow[]>(CHECKS, [equipment.id]);
  const done = await loadDoneWith(tx, equipment.id);
  const windows = windowsOf(checks).map((window) => ({
    ...window,
    done: done.filter((row) => isWithin(window, row.happened_at)),
  }));
  const about = [...checks.map(({ id }) => id), ...windows.flatMap((window) => window.done.map(({ id }) => id))];
  return {
    ...{ equipment, checks, windows, plant: await plantOf(tx, 'equipment', equipment.version) },
    dispositions: await loadDispositions(tx, about, NOW),
    newest: await loadNewestOfRecall(tx, equipment.id),
  };
};
