import { h, type Child } from '../platform/dom.js';
import { filterForm, line } from '../platform/filter-form.js';
import { empty, heading, section, type Page } from '../platform/page.js';
import { pagedTable } from '../platform/paged-table.js';
import { keepInAddress, type Route } from '../platform/route.js';
import { listHulls, listLots } from '../platform/calls.js';
import { HULL_COLUMNS } from '../hulls/hull-list.js';
import { LOT_COLUMNS } from '../lots/lot-list.js';
import { sharedLotsForm } from './shared-lots.js';

/** One box for hull numbers, HINs and lot codes; and the lots that some hulls share. */
export const searchPage = ({ query }: Route): Page => {
  const first = query.get('for') ?? '';
  const found = h('div', {}, results(first));
  const form = filterForm(
    'Find',
    [{ name: 'for', label: 'Hull number, HIN or lot, or part of it', control: line(first) }],
    (chosen) => {
      keepInAddress(['search'], chosen);
      found.replaceChildren(...results(chosen['for'] ?? ''));
    },
  );
  return {
    title: 'Search',
    content: [
      heading('Search'),
      section('Find a hull or a lot', form, found),
      section('Which lots do these hulls share?', sharedLotsForm(query.get('hulls') ?? '')),
    ],
  };
};

const results = (search: string): readonly HTMLElement[] =>
  search === ''
    ? [
        empty(
          'Type a hull number, a HIN or a lot code. Our own lot codes and suppliers’ lot numbers are both looked at.',
        ),
      ]
    : [hulls(search), lots(search)];

const hulls = (search: string): HTMLElement =>
  pagedTable({
    what: 'hulls',
    caption: `Hulls whose number or HIN holds “${search}”`,
    columns: HULL_COLUMNS,
    load: (cursor) => listHulls({ search, limit: '20', cursor }),
    empty: () => none(`No hull number or HIN holds “${search}”.`),
  });

const lots = (search: string): HTMLElement =>
  pagedTable({
    what: 'lots',
    caption: `Lots whose code or supplier's lot holds “${search}”`,
    columns: LOT_COLUMNS,
    load: (cursor) => listLots({ search, limit: '20', cursor }),
    empty: () => none(`No lot code or supplier's lot holds “${search}”.`),
  });

const none = (words: string): Child => empty(words, ' Type less of it, or check it against the label.');
