import type { LayerRecordView, RepairView, TouchUpView, UsedView } from '@hull-record/contracts';
import type { SupplierLot } from '../platform/lots/supplier-lots.js';
import type { RepairRow, TouchUpRow } from '../platform/views/faults.js';
import type { LayerRow, ReadingRow, UsedRow } from '../platform/views/making.js';
import type { NextLayer } from '../platform/rules/lay-up-window.js';
import { verdictsOf, type VerdictRow } from '../platform/views/verdicts.js';
import { toReadingView } from '../platform/views/to-view.js';

/** What was used and read on a part, with the supplier lots behind each lot. */
export interface Making {
  readonly used: readonly UsedRow[];
  readonly readings: readonly ReadingRow[];
  readonly verdicts: readonly VerdictRow[];
  /** When the next layer bonds, by the root of each layer's record. */
  readonly windows: ReadonlyMap<string, NextLayer>;
  readonly supplierLots: ReadonlyMap<string, readonly SupplierLot[]>;
}

const amountOf = ({ quantity, unit, basis, kg }: UsedRow) => ({ quantity, unit, basis, kg });

const toUsedView = (row: UsedRow, making: Making): UsedView => ({
  id: row.id,
  lot: row.lot,
  lotId: row.lot_id,
  tank: row.tank,
  supplierLots: [...(making.supplierLots.get(row.lot_id) ?? [])],
  amount: amountOf(row),
  happenedAt: row.happened_at.toISOString(),
  corrected: row.id !== row.root,
});

/** Past this a sheet names no latest time. */
const NO_END = Date.UTC(2_300, 0);

const toNextLayer = (window: NextLayer | undefined): LayerRecordView['nextLayer'] =>
  window === undefined || window.times.latest > NO_END
    ? null
    : {
        from: new Date(window.times.earliest).toISOString(),
        until: new Date(window.times.latest).toISOString(),
        source: window.source,
      };

/** A layer as made, or null when it is still to come. */
export const toLayerView = (row: LayerRow | undefined, making: Making): LayerRecordView | null =>
  row === undefined
    ? null
    : {
        id: row.id,
        startedAt: row.started_at.toISOString(),
        endedAt: row.ended_at.toISOString(),
        recordedAt: row.recorded_at.toISOString(),
        doneBy: row.done_by,
        enteredBy: row.entered_by,
        climate: row.climate,
        note: row.note,
        used: making.used.filter((used) => used.into_id === row.root).map((used) => toUsedView(used, making)),
        readings: making.readings.filter((reading) => reading.of_id === row.root).map(toReadingView),
        verdicts: verdictsOf(making.verdicts, row.root),
        nextLayer: toNextLayer(making.windows.get(row.root)),
        area: row.area,
        surfacePrepared: row.surface_prepared,
        signature:
          row.signed_by === null || row.signed_at === null
            ? null
            : { by: row.signed_by, at: row.signed_at.toISOString(), identity: row.signature_identity ?? 'stated' },
        corrected: row.id !== row.root,
      };

export const toRepairView = (row: RepairRow, making: Making): RepairView => ({
  id: row.id,
  mark: row.mark,
  defects: row.defects,
  procedure: row.procedure,
  taperRatio: row.taper_ratio,
  grindOutMm: row.grind_out_mm,
  geometry: row.geometry,
  verdicts: verdictsOf(making.verdicts, row.id),
  plies: row.plies,
  doneBy: row.done_by,
  outside: row.outside,
  ...{ reportedBy: row.reported_by, note: row.note, photos: row.photos },
  reInspections: row.re_inspections,
  used: making.used
    .filter((used) => used.into_id === row.id)
    .map((used) => ({ id: used.id, lot: used.lot, lotId: used.lot_id, amount: amountOf(used) })),
  readings: making.readings.filter((reading) => reading.of_id === row.id).map(toReadingView),
  acceptance:
    row.accepted === null || row.accepted_by === null || row.accepted_at === null
      ? null
      : {
          accepted: row.accepted,
          by: row.accepted_by,
          at: row.accepted_at.toISOString(),
          note: row.acceptance_note,
          identity: row.acceptance_identity ?? 'stated',
        },
  happenedAt: row.happened_at.toISOString(),
});

export const toTouchUpView = (row: TouchUpRow, making: Making): TouchUpView => ({
  ...{ id: row.id, mark: row.mark, spots: row.spots, doneBy: row.done_by, note: row.note },
  used: making.used
    .filter((used) => used.into_id === row.id)
    .map((used) => ({ id: used.id, lot: used.lot, lotId: used.lot_id, amount: amountOf(used) })),
  acceptance:
    row.accepted === null || row.accepted_by === null || row.accepted_at === null
      ? null
      : { accepted: row.accepted, by: row.accepted_by, at: row.accepted_at.toISOString(), note: row.acceptance_note },
  happenedAt: row.happened_at.toISOString(),
});
