import { h } from '../platform/dom.js';
import { choice, filterForm, line, type Field } from '../platform/filter-form.js';
import { empty, heading, type Page } from '../platform/page.js';
import { pagedTable } from '../platform/paged-table.js';
import { region } from '../platform/region.js';
import { keepInAddress, type Route } from '../platform/route.js';
import { listLots, listMaterials } from '../platform/calls.js';
import { LOT_COLUMNS, noLots, ORIGIN_WORDS } from './lot-list.js';

type Chosen = Readonly<Record<string, string>>;

const NAMES = ['search', 'state', 'material', 'origin'] as const;
const STATES = ['quarantined', 'released', 'held', 'rejected'].map((state) => [state, state] as const);

/** All lots, the newest first, narrowed by code, state, material and origin. */
export const lotsPage = ({ query }: Route): Page => {
  const first = Object.fromEntries(NAMES.map((name) => [name, query.get(name) ?? '']));
  const place = h('div', {}, list(first));
  const form = region({
    what: 'the materials to choose from',
    load: listMaterials,
    show: (materials) =>
      filterForm(
        'Show',
        fields(
          first,
          materials.map(({ code, name }) => [code, name] as const),
        ),
        (chosen) => {
          keepInAddress(['lots'], chosen);
          place.replaceChildren(list(chosen));
        },
      ),
  });
  return { title: 'Lots', content: [heading('Lots'), form, place] };
};

const fields = (chosen: Chosen, materials: readonly (readonly [string, string])[]): readonly Field[] => [
  { name: 'search', label: "Part of a code or supplier's lot", control: line(chosen['search'] ?? '') },
  { name: 'state', label: 'State', control: choice(chosen['state'] ?? '', STATES) },
  { name: 'material', label: 'Material', control: choice(chosen['material'] ?? '', materials) },
  { name: 'origin', label: 'Origin', control: choice(chosen['origin'] ?? '', Object.entries(ORIGIN_WORDS)) },
];

const list = (chosen: Chosen): HTMLElement =>
  pagedTable({
    what: 'lots',
    caption: 'Lots, the newest first',
    columns: LOT_COLUMNS,
    load: (cursor) => listLots({ ...chosen, limit: '50', cursor }),
    empty: () =>
      Object.values(chosen).every((value) => value === '')
        ? noLots()
        : empty('No lot is like that. Choose “any” for one of the fields, or type less of the code.'),
  });
