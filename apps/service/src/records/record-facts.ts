import type { EntityManager } from 'typeorm';
import { loadDefects, loadNonconformities, loadRepairs, loadTouchUps } from '../platform/views/faults.js';
import { loadVerdicts } from '../platform/views/verdicts.js';
import { loadLayerRecords, loadParts, loadReadings, loadUsed } from '../platform/views/making.js';
import { loadMolds } from './load-molds.js';
import { loadEquipment } from './load-equipment.js';
import { loadCorrections } from './load-corrections.js';
import { loadScrapped } from './load-scrapped.js';
import { loadHins, loadJoints, loadLife, type HullRow } from './load-hull.js';
import { loadDispositions, loadHullNonconformities, loadLotsNotReleased, loadMaterials } from './load-judgements.js';
import { loadOpenHolds } from './load-holds.js';
import { loadMadeOf } from './load-made-of.js';
import { loadNewest } from './load-newest.js';

/** Everything recorded of one hull by an instant, as rows; what the paper words. */
export type RecordFacts = Awaited<ReturnType<typeof loadRecordFacts>>;

/**
 * Loads everything recorded of a hull by an instant. Its parts are those joined to it by then.
 *
 * @param tx one transaction that sees one moment, so that the record is of one moment
 */
export const loadRecordFacts = async (tx: EntityManager, hull: HullRow, asOf: string) => {
  const joints = await loadJoints(tx, hull.id, asOf);
  const partIds = joints.map((joint) => joint.part_id);
  const parts = await loadParts(tx, partIds, asOf);
  const layers = await loadLayerRecords(tx, partIds, asOf);
  const repairs = await loadRepairs(tx, partIds, asOf);
  const touchUps = await loadTouchUps(tx, partIds, asOf);
  const places = [...layers.map((row) => row.root), ...[...repairs, ...touchUps, ...joints].map((row) => row.id)];
  const used = await loadUsed(tx, places, asOf);
  const madeOf = await loadMadeOf(
    tx,
    used.map((row) => row.lot_id),
    asOf,
  );
  const drawn = { hull: hull.id, parts: partIds, lots: madeOf.lots };
  const codes = parts.flatMap((part) =>
    part.layers.flatMap((layer) => layer.materials.map(({ material }) => material)),
  );
  const judged = await loadJudged(tx, { hullId: hull.id, partIds, places, lots: madeOf.lots }, asOf);
  return {
    ...{ hull, joints, parts, layers, repairs, touchUps, used, madeOf, ...judged },
    hins: await loadHins(tx, hull.id, asOf),
    scrapped: await loadScrapped(tx, partIds, asOf),
    life: await loadLife(tx, hull.id, asOf),
    materials: await loadMaterials(tx, hull.id, codes, asOf),
    molds: await loadMolds(tx, partIds, asOf),
    equipment: await loadEquipment(tx, places, asOf),
    corrections: await loadCorrections(tx, drawn, asOf),
    newest: await loadNewest(tx, drawn, asOf),
  };
};

interface ToJudge {
  readonly hullId: string;
  readonly partIds: readonly string[];
  readonly places: readonly string[];
  readonly lots: readonly string[];
}

const loadJudged = async (tx: EntityManager, { hullId, partIds, places, lots }: ToJudge, asOf: string) => {
  const readings = await loadReadings(tx, [...places, ...partIds], asOf);
  const defects = await loadDefects(tx, { parts: partIds }, asOf);
  const ofParts = await loadNonconformities(tx, partIds, asOf);
  const ofHull = await loadHullNonconformities(tx, hullId, lots, asOf);
  const about = [...readings.map((row) => row.root), ...[...defects, ...ofParts, ...ofHull].map((row) => row.id)];
  return {
    ...{
      readings,
      defects,
      verdicts: await loadVerdicts(tx, [...places, ...lots, ...defects.map((row) => row.id)], asOf),
    },
    nonconformities: [...ofParts, ...ofHull],
    dispositions: await loadDispositions(tx, about, asOf),
    lotsNotReleased: await loadLotsNotReleased(tx, lots, asOf),
    openHolds: await loadOpenHolds(tx, { hullId, lots }, asOf),
  };
};
