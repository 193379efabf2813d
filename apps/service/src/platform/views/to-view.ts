import type { DefectView, ReadingView } from '@hull-record/contracts';
import type { DefectRow } from './faults.js';
import type { ReadingRow } from './making.js';

/** A defect as the API shows it. */
export const toDefectView = (row: DefectRow): DefectView => ({
  id: row.id,
  mark: row.mark,
  part: row.part,
  layer: row.layer,
  kind: row.kind,
  place: row.place,
  percentOfLength: row.percent_of_length,
  zone: row.zone,
  lengthMm: row.length_mm,
  widthMm: row.width_mm,
  depthMm: row.depth_mm,
  grade: row.grade,
  note: row.note,
  photos: row.photos,
  state: row.state,
  disposition: row.disposition,
  concession: row.concession,
  repairs: row.repairs,
  asks: row.asks,
  bucketOrGun: row.bucket_or_gun,
  happenedAt: row.happened_at.toISOString(),
  by: row.by,
});

/** A reading as the API shows it. */
export const toReadingView = (row: ReadingRow): ReadingView => ({
  id: row.id,
  what: row.what,
  spot: row.spot,
  value: row.value,
  below: row.below,
  unit: row.unit,
  si: row.si_value,
  place: row.place,
  equipment: row.equipment,
  verdict: row.verdict,
  crossesLimit: row.crosses_limit,
  rule: row.rule,
  by: row.by,
  happenedAt: row.happened_at.toISOString(),
  concession: row.concession,
  suspect: row.suspect,
});
