import type { TouchedSpots } from '@hull-record/contracts';
import type { DefectView, HullMapView, MarkState, RepairView, SeenFrom } from '@hull-record/paper';
import type { DefectRow, RepairRow } from '../platform/views/faults.js';
import type { PartRow } from '../platform/views/making.js';
import type { PlantTime } from '../platform/papers/plant-time.js';
import type { RecordFacts } from './record-facts.js';
import { identity, wordDisposition } from './word-judgements.js';
import { iso4628 } from '../platform/views/to-view.js';
import { verdictsOf } from '../platform/views/verdicts.js';
import { wordOutside } from './word-outside.js';
import { wordPhotos, type Pictures } from './word-photos.js';
import { wordReadings } from './word-readings.js';
import { wordUsed } from './word-used.js';
import { count, decimal, defectKind, place } from './word-values.js';

/** The defects of a part in the order of their marks. */
export const wordDefects = (
  facts: RecordFacts,
  part: PartRow,
  time: PlantTime,
  pictures: Pictures,
): readonly DefectView[] =>
  facts.defects
    .filter((row) => row.part_id === part.id)
    .map((row) => ({
      mark: row.mark,
      kind: gradedKind(row),
      place: placeOf(row),
      size: sizeOf(row),
      layer: layerOf(part, row),
      state: row.state,
      disposition: decidedOf(facts, row, time),
      note: noteOf(row, time, 'printed'),
      photos: wordPhotos(row, time, pictures),
      verdicts: verdictsOf(facts.verdicts, row.id).map((verdict) => ({
        ...verdict,
        topic: `${verdict.topic} of ${row.mark}`,
      })),
    }));

export const gradedKind = (row: DefectRow): string => {
  const { label } = defectKind(row.kind);
  const iso = iso4628(row);
  return iso === null
    ? label
    : `${label}, grade ${row.grade ?? ''} (ASTM D714); ${iso.grade} by the crosswalk of ${iso.source}`;
};

export const placeOf = (row: DefectRow): string => {
  const along = row.percent_of_length === null ? [] : [`${decimal(row.percent_of_length, 0)} % of the length`];
  return [place(row.place), ...along, ...(row.zone === '' ? [] : [row.zone])].join('; ');
};

export const sizeOf = (row: DefectRow): string => {
  const { length_mm, width_mm, depth_mm } = row;
  const across = [length_mm, width_mm].flatMap((mm) => (mm === null ? [] : [decimal(mm, 1)])).join(' × ');
  const deep = depth_mm === null ? [] : [`${decimal(depth_mm, 1)} mm deep`];
  const counted =
    row.counted === null || row.counted_area_m2 === null
      ? []
      : [`${row.counted} in ${row.counted_area_m2} m2, ${decimal(row.counted / row.counted_area_m2, 1)} per m2`];
  return [...(across === '' ? [] : [`${across} mm`]), ...deep, ...counted].join(', ') || 'size not recorded';
};

export const layerOf = ({ layers }: PartRow, { layer }: DefectRow): string => {
  const position = layers.findIndex(({ code }) => code === layer);
  return position < 0 ? 'layer not known' : `layer ${position + 1}, ${layers[position]?.name ?? ''}`;
};

const decidedOf = (facts: RecordFacts, row: DefectRow, time: PlantTime): string | null => {
  const decided = facts.dispositions.get(row.id);
  const parts = [
    ...(decided === undefined ? [] : [wordDisposition(decided, time)]),
    ...(row.repairs.length === 0 ? [] : [`repair ${row.repairs.join(', ')}`]),
  ];
  return parts.length === 0 ? null : parts.join('; ');
};

/**
 * Who reported a defect and what was noted; photos by their number where the paper prints them, elsewhere by the
 * beginning of the SHA-256 of each original: enough to tell it, short enough to print.
 */
export const noteOf = (row: DefectRow, time: PlantTime, photos: 'printed' | 'named'): string =>
  [
    `reported by ${row.by}, ${time.at(row.happened_at)}`,
    ...(row.note === null ? [] : [row.note]),
    ...(row.photos.length === 0 ? [] : [`${count(row.photos.length, 'photo')}, ${where(row, photos)}`]),
  ].join('; ');

const where = (row: DefectRow, photos: 'printed' | 'named'): string =>
  photos === 'printed'
    ? 'printed below'
    : `SHA-256 of the original begins ${row.photos.map(({ originalSha256 }) => originalSha256.slice(0, 12)).join(', ')}`;

/** The repairs of a part in the order of their marks. */
export const wordRepairs = (facts: RecordFacts, part: PartRow, time: PlantTime): readonly RepairView[] =>
  facts.repairs
    .filter((row) => row.part_id === part.id)
    .map((row) => ({
      mark: row.mark,
      defects: row.defects,
      when: time.at(row.happened_at),
      procedure: row.procedure,
      geometry: geometryOf(row),
      plies: row.plies.join(' + '),
      used: wordUsed(facts, row.id),
      readings: wordReadings(facts, row.id, time),
      verdicts: verdictsOf(facts.verdicts, row.id),
      doneBy:
        row.outside === null
          ? row.done_by
          : [`outside repair, at ${row.outside.at}, recorded from ${row.outside.toldBy}`],
      outside: wordOutside(row, wordUsed(facts, row.id).length > 0),
      acceptance:
        [acceptanceOf(row, time), ...row.re_inspections.map((again) => wordAgain(again, time))]
          .filter((said) => said !== null)
          .join('; ') || null,
    }));

const wordAgain = ({ passed, by, at, note }: RepairRow['re_inspections'][number], time: PlantTime): string =>
  `inspected again by ${by}, ${time.at(new Date(at))}: ${passed ? 'passed' : 'failed'}${note === null ? '' : `, ${note}`}`;

/** Touch-ups stand with the repairs, each entry as one. */
export const wordTouchUps = (facts: RecordFacts, part: PartRow, time: PlantTime): readonly RepairView[] =>
  facts.touchUps
    .filter((row) => row.part_id === part.id)
    .map((row) => ({
      ...{
        mark: row.mark,
        defects: [],
        when: time.at(row.happened_at),
        outside: null,
        geometry: '',
        plies: '',
        readings: [],
        verdicts: [],
      },
      procedure: `Touch-up: ${row.spots.map(wordSpots).join('; ')}`,
      used: wordUsed(facts, row.id),
      doneBy: row.done_by,
      acceptance: acceptanceOf(row, time),
    }));

const wordSpots = ({ zone, kind, count, largestMm }: TouchedSpots): string =>
  `${count} × ${kind.replaceAll('-', ' ')}, ${zone}${largestMm === undefined ? '' : `, up to ${largestMm} mm`}`;

const geometryOf = ({ taper_ratio, grind_out_mm: out }: RepairRow): string =>
  [
    ...(taper_ratio === null ? [] : [`taper ${decimal(taper_ratio, 1)}:1`]),
    ...(out ? [`ground out ${out.lengthMm} × ${out.widthMm} mm, ${out.depthMm} mm deep`] : []),
  ].join(', ');

type Accepted = Pick<RepairRow, 'accepted' | 'accepted_by' | 'accepted_at' | 'acceptance_note' | 'acceptance_identity'>;

const acceptanceOf = (row: Accepted, time: PlantTime): string | null => {
  if (row.accepted === null || row.accepted_by === null || row.accepted_at === null) return null;
  const note = row.acceptance_note === null ? '' : `; ${row.acceptance_note}`;
  const judged = row.accepted ? 'accepted' : 'refused';
  return `${judged} by ${row.accepted_by}, ${time.at(row.accepted_at)}; ${identity(row.acceptance_identity)}${note}`;
};

export const SEEN_FROM: Readonly<Record<string, SeenFrom>> = {
  'hull molding': 'outside, from below',
  liner: 'inside, from above',
  'stringer grid': 'inside, from above',
};

export const MARKS: Readonly<Record<DefectRow['state'], MarkState>> = {
  open: 'open',
  'repair to be accepted': 'open',
  repaired: 'repaired',
  concession: 'concession',
  scrapped: 'other',
};

/** The map of a part with its defects: always of the hull molding, of another part when there is something to show. */
export const wordMap = (facts: RecordFacts, { id, kind, skin }: PartRow): HullMapView | undefined => {
  const defects = facts.defects.filter((row) => row.part_id === id);
  if (skin === null || (defects.length === 0 && kind !== 'hull molding')) return undefined;
  return {
    skin,
    seenFrom: SEEN_FROM[kind] ?? 'outside, from above',
    marks: defects.map(({ mark, place: at, state }) => ({ mark, place: at, state: MARKS[state] })),
  };
};
