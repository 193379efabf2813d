import type { DefectView } from '@hull-record/contracts';
import { figure } from '../platform/words.js';
import { DEFECT_KINDS, type Place } from '../trade.js';

/** The name of a kind of defect. */
export const defectKind = (code: string): string => DEFECT_KINDS.find((kind) => kind.code === code)?.label ?? code;

const mm = (value: number): string => figure(value, 4);

/** How large a defect is, as far as it was measured. */
export const sizeWords = ({ lengthMm, widthMm, depthMm, grade, iso4628, perM2 }: DefectView): string => {
  const sides = [lengthMm, widthMm].flatMap((side) => side ?? []).map(mm);
  const across = sides.length === 0 ? [] : [`${sides.join(' × ')} mm`];
  const deep = depthMm === null ? [] : [`${mm(depthMm)} mm deep`];
  const graded = grade === null ? [] : [`ASTM D714 ${grade}`];
  const crossed = iso4628 === null ? [] : [`about ${iso4628.grade} by ISO 4628-2 (from memory)`];
  const dense = perM2 === null ? [] : [`${figure(perM2)} per m²`];
  return [...across, ...deep, ...graded, ...crossed, ...dense].join(', ');
};

/** Where a defect is: as measured, then as the zone is called. */
export const placeWords = ({ place, zone, percentOfLength }: DefectView): string => {
  const along = percentOfLength === null ? '' : ` (${figure(percentOfLength)} % of length)`;
  return `${measured(place)}${along}: ${zone}`;
};

const measured = (place: Place): string =>
  place.surface === 'shell'
    ? `${place.side}, ${mm(place.fromTransomMm)} mm from the transom, ${mm(place.girthMm)} mm from the keel`
    : `transom, ${place.side}, ${mm(place.offsetMm)} mm off the centreline, ${mm(place.heightMm)} mm up`;
