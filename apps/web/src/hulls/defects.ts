import type { DefectView, ModelView, PartView } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { link } from '../platform/page.js';
import { hrefOf } from '../platform/route.js';
import { table, type Column } from '../platform/table.js';
import { day } from '../platform/words.js';
import { defectMark } from '../marks/defect-mark.js';
import { defectKind, placeWords, sizeWords } from '../defects/defect-words.js';
import { hullMap } from './hull-map.js';
import { verdictsOf } from './verdicts.js';

/** The defects of a part: on the hull map, and as a list. */
export const defectsOf = (part: PartView, model: ModelView | undefined): Child => {
  const skin = model?.skins[part.kind as keyof ModelView['skins']];
  const listed =
    part.defects.length === 0
      ? h('p', {}, 'No defect is recorded on this part.')
      : table(`Defects of ${part.number}, numbered as on the map`, COLUMNS, part.defects);
  const rows = listed instanceof HTMLTableElement ? [...(listed.tBodies[0]?.rows ?? [])] : [];
  const map = skin === undefined ? noMap(part) : hullMap(part, skin, (index) => rows[index]);
  return [h('h3', {}, 'Defects'), h('div', { class: 'map-and-list' }, map, h('div', {}, listed))];
};

const noMap = ({ kind, model }: PartView): Child =>
  h('p', { class: 'soft' }, `Model ${model} gives no skin for a ${kind}, so there is no map; places are in the list.`);

const COLUMNS: readonly Column<DefectView>[] = [
  { head: 'Mark', cell: ({ mark }) => mark, names: true, class: 'n' },
  { head: 'Defect', cell: (defect) => [h('b', {}, defectKind(defect.kind)), ` ${sizeWords(defect)}`, note(defect)] },
  { head: 'Layer', cell: ({ layer }) => layer ?? 'not known', class: 'n' },
  { head: 'Place', cell: (defect) => placeWords(defect) },
  { head: 'Found', cell: ({ happenedAt, by }) => [day(happenedAt), `, ${by}`] },
  { head: 'Outcome', cell: (defect) => [outcome(defect), verdictsOf(defect.verdicts)] },
  { head: 'Lots', cell: ({ id, mark }) => link(hrefOf(['defects', id]), `lots at ${mark}`), class: 'nb' },
];

const note = ({ note: words, photos }: DefectView): Child => [
  words === null ? null : h('p', { class: 'note' }, words),
  photos.map(({ id }, i) => h('p', { class: 'note' }, link(`/api/photos/${encodeURIComponent(id)}`, `photo ${i + 1}`))),
];

function outcome(defect: DefectView): Child {
  const by = defect.repairs.length === 0 ? '' : `, ${defect.repairs.join(', ')}`;
  const under = defect.concession === null ? '' : ` ${defect.concession}`;
  return defectMark(defect.state, `${defect.state}${under}${by}`);
}
