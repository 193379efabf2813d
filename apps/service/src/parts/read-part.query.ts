import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import type { PartView } from '@hull-record/contracts';
import { demandOf } from '../platform/layers/demand.js';
import { loadUpstream } from '../platform/composition/load-upstream.js';
import { standing } from '../platform/facts/standing.js';
import { supplierLotsOf, type SupplierLot } from '../platform/lots/supplier-lots.js';
import { recomputingParts } from '../platform/recompute/recomputing.js';
import { NotThere } from '../platform/refusals.js';
import { loadDefects, loadNonconformities, loadRepairs, loadTouchUps } from '../platform/views/faults.js';
import { windowsOf } from '../platform/rules/lay-up-window.js';
import { loadVerdicts } from '../platform/views/verdicts.js';
import { loadLayerRecords, loadParts, loadReadings, loadUsed, NOW, type PartRow } from '../platform/views/making.js';
import { toDefectView, toReadingView } from '../platform/views/to-view.js';
import { toLayerView, toRepairView, toTouchUpView, type Making } from './to-part-view.js';

/** One part: its layers as scheduled and as made, with lots and readings; its defects, repairs and nonconformities. */
@Injectable()
export class ReadPart {
  constructor(private readonly db: DataSource) {}

  run(number: string): Promise<PartView> {
    return readAsOne(this.db, (tx) => this.read(tx, number));
  }

  private async read(tx: EntityManager, number: string): Promise<PartView> {
    const id = await find(tx, number);
    const [part] = (await loadParts(tx, [id], NOW)) as [PartRow];
    const records = await loadLayerRecords(tx, [id], NOW);
    const repairs = await loadRepairs(tx, [id], NOW);
    const touchUps = await loadTouchUps(tx, [id], NOW);
    const places = [...records.map((row) => row.root), ...[...repairs, ...touchUps].map((row) => row.id)];
    const defects = await loadDefects(tx, { parts: [id] }, NOW);
    const joints = part.joint === null ? [] : [part.joint];
    const used = await loadUsed(tx, places, NOW);
    const making: Making = {
      used,
      readings: await loadReadings(tx, places, NOW),
      verdicts: await loadVerdicts(tx, [...places, ...defects.map((row) => row.id)], NOW),
      windows: await windowsOf(tx, id),
      supplierLots: await supplierLots(
        tx,
        used.map((row) => row.lot_id),
      ),
    };
    const nonconformities = await loadNonconformities(tx, [id], NOW);
    return {
      ...{
        id,
        number: part.number,
        kind: part.kind,
        model: part.model,
        mold: part.mold,
        scheduleVersion: part.version,
        hull: part.hull,
      },
      layers: part.layers.map(({ id: layer, ...scheduled }) => ({
        scheduled,
        demand: demandOf(scheduled),
        record: toLayerView(
          records.find((row) => row.schedule_layer_id === layer),
          making,
        ),
      })),
      defects: defects.map((row) => toDefectView(row, making.verdicts)),
      repairs: repairs.map((row) => toRepairView(row, making)),
      touchUps: touchUps.map((row) => toTouchUpView(row, making)),
      recomputing: await recomputingParts(tx, [id]),
      partReadings: (await loadReadings(tx, [id], NOW)).map(toReadingView),
      jointReadings: (await loadReadings(tx, joints, NOW)).map(toReadingView),
      scrapped: await scrapped(tx, id),
      nonconformities: nonconformities.map((row) => ({
        ...{ id: row.id, rule: row.rule, detail: row.detail, disposition: row.disposition, goOn: row.go_on },
        happenedAt: row.happened_at.toISOString(),
      })),
    };
  }
}

const find = async (tx: EntityManager, number: string): Promise<string> => {
  const [found] = await tx.query<{ id: string }[]>(
    `select p.id from fact.part p where (p.number = $1 or p.id::text = lower($1)) and ${standing('p')} order by p.recorded_at limit 1`,
    [number],
  );
  if (!found) throw new NotThere('part', number);
  return found.id;
};

const scrapped = async (tx: EntityManager, id: string): Promise<PartView['scrapped']> => {
  const [found] = await tx.query<{ reason: string; at: Date }[]>(
    `select s.reason, s.happened_at as at from fact.part_scrapped s where s.part_id = $1 and ${standing('s')}`,
    [id],
  );
  return found ? { reason: found.reason, at: found.at.toISOString() } : null;
};

const supplierLots = async (
  tx: EntityManager,
  lots: readonly string[],
): Promise<ReadonlyMap<string, readonly SupplierLot[]>> => {
  const graph = await loadUpstream(tx, [...new Set(lots)]);
  return supplierLotsOf(tx, [...new Set(lots)], graph, NOW);
};
