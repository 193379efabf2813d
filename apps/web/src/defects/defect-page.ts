import type { DefectSuspects, DefectView } from '@hull-record/contracts';
import { h, joined, type Child } from '../platform/dom.js';
import { empty, facts, heading, link, section, type Page } from '../platform/page.js';
import { region } from '../platform/region.js';
import { table, type Column } from '../platform/table.js';
import { counted, kilograms, moment, percent } from '../platform/words.js';
import { readDefect, suspectsOf } from '../platform/calls.js';
import { defectMark } from '../marks/defect-mark.js';
import { hullLink } from '../hulls/hull-list.js';
import { lotLink } from '../lots/lot-list.js';
import { pathsWords } from '../lots/path-words.js';
import { defectKind, placeWords, sizeWords } from './defect-words.js';

/** One defect: the lots in its layer and place, and the other hulls that hold each of them. */
export const defectPage = (id: string): Page => {
  const title = heading('Defect');
  const body = region({
    what: 'the defect and the lots at its place',
    load: () => Promise.all([readDefect(id), suspectsOf(id)]),
    show: ([defect, suspects]) => {
      title.querySelector('#name')?.replaceChildren(`Defect ${defect.mark} of ${defect.part}`);
      return show(defect, suspects);
    },
    notThere: () =>
      empty('There is no such defect. Open the hull it is on and follow its mark: ', link('#/hulls', 'all hulls'), '.'),
  });
  return { title: 'Defect', content: [title, body] };
};

const show = (defect: DefectView, { hull, lots, looksAt }: DefectSuspects): Child => [
  facts([
    ['Hull', hull === null ? 'in no hull yet' : h('span', { class: 'n' }, hullLink(hull))],
    ['Defect', `${defectKind(defect.kind)} ${sizeWords(defect)}`],
    ['Layer', defect.layer ?? 'not known'],
    ['Place', placeWords(defect)],
    ['Outcome', defectMark(defect.state, defect.state)],
    ['Found', moment(defect.happenedAt)],
  ]),
  section(
    'Lots at its place',
    h('p', {}, looksAt),
    lots.length === 0
      ? empty('No lot is recorded there. Record what was used in the layer first.')
      : table('Lots in the layer and place of the defect', COLUMNS, lots),
    h(
      'p',
      { class: 'note soft' },
      'Assumes a well-mixed tank. A lot at the place of a defect is associated with it; that is no finding about the lot.',
    ),
  ),
];

type Suspect = DefectSuspects['lots'][number];

const COLUMNS: readonly Column<Suspect>[] = [
  { head: 'Lot', cell: ({ lot }) => lotLink(lot), names: true, class: 'n' },
  {
    head: 'Material',
    cell: ({ material, role, supplierLot }) =>
      `${material ?? 'unknown'} (${role})${supplierLot === null ? '' : `, ${supplierLot}`}`,
  },
  { head: 'There', cell: ({ kg }) => kilograms(kg), class: 'r' },
  { head: 'Share of the layer', cell: ({ share }) => percent(share), class: 'r' },
  {
    head: 'By which way',
    cell: ({ places }) =>
      h(
        'ul',
        { class: 'plain' },
        places.map(({ place, kind, paths }) => h('li', {}, `${kind} ${place}: `, pathsWords(paths))),
      ),
  },
  { head: 'Other hulls that hold it', cell: others },
];

function others({ otherHulls, otherHullCount }: Suspect): Child {
  if (otherHullCount === 0) return 'none';
  const rest = otherHullCount - otherHulls.length;
  return [
    `${counted(otherHullCount, 'hull')}: `,
    h('span', { class: 'n' }, joined(otherHulls.map(hullLink), ', ')),
    rest > 0 ? ` and ${rest} more` : null,
  ];
}
