import type { DefectView, ReadingView } from '@hull-record/contracts';
import { blistersPerM2, formatIso4628, iso4628Of, ISO_4628_SOURCE, parseD714 } from '@hull-record/trade';
import type { DefectRow } from './faults.js';
import type { ReadingRow } from './making.js';
import { verdictsOf, type VerdictRow } from './verdicts.js';

/** The ISO 4628-2 grade of a blister graded by ASTM D714; null of any other defect. */
export const iso4628 = ({ grade }: Pick<DefectRow, 'grade'>): DefectView['iso4628'] => {
  const d714 = grade === null ? undefined : parseD714(grade);
  return d714 === undefined ? null : { grade: formatIso4628(iso4628Of(d714)), source: ISO_4628_SOURCE };
};

/** A defect as the API shows it. */
export const toDefectView = (row: DefectRow, verdicts: readonly VerdictRow[]): DefectView => ({
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
  iso4628: iso4628(row),
  counted: row.counted,
  countedAreaM2: row.counted_area_m2,
  perM2: row.counted === null || row.counted_area_m2 === null ? null : blistersPerM2(row.counted, row.counted_area_m2),
  verdicts: verdictsOf(verdicts, row.id),
  note: row.note,
  photos: row.photos.map(({ id, originalSha256, redactedOn }) => ({ id, originalSha256, redactedOn })),
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
