import type { DefectView } from '@hull-record/contracts';
import type { Words } from '../words/words.js';

/** How large a defect is, as far as it was measured; sides are in millimetres. */
export const sizeWords = (defect: DefectView, { t, figure }: Words): string => {
  const { lengthMm, widthMm, depthMm, grade, iso4628, perM2 } = defect;
  const mm = (value: number): string => figure(value, 4);
  const sides = [lengthMm, widthMm].flatMap((side) => side ?? []).map(mm);
  const across = sides.length === 0 ? [] : [`${sides.join(' × ')} mm`];
  const deep = depthMm === null ? [] : [t('record.deep', { depth: mm(depthMm) })];
  const graded = grade === null ? [] : [`ASTM D714 ${grade}`];
  const crossed = iso4628 === null ? [] : [t('record.iso4628', { grade: String(iso4628.grade) })];
  const dense = perM2 === null ? [] : [t('record.perM2', { count: figure(perM2) })];
  return [...across, ...deep, ...graded, ...crossed, ...dense].join(', ');
};

/** Where a defect is: as measured, then as the zone is called. */
export const placeWords = ({ place, zone, percentOfLength }: DefectView, words: Words): string => {
  const { t, term, figure } = words;
  const along = percentOfLength === null ? '' : ` ${t('record.along', { percent: figure(percentOfLength) })}`;
  const zones = zone.split(', ').map(term).join(', ');
  return `${measured(place, words)}${along}: ${zones}`;
};

const measured = (place: DefectView['place'], { t, term, figure }: Words): string => {
  const mm = (value: number): string => figure(value, 4);
  const side = term(place.side);
  return place.surface === 'shell'
    ? t('record.onShell', { side, along: mm(place.fromTransomMm), girth: mm(place.girthMm) })
    : t('record.onTransom', { side, offset: mm(place.offsetMm), height: mm(place.heightMm) });
};
