import { h } from '../platform/dom.js';
import { filterForm, line } from '../platform/filter-form.js';
import { empty, heading, link, type Page } from '../platform/page.js';
import { pagedTable } from '../platform/paged-table.js';
import { keepInAddress, type Route } from '../platform/route.js';
import { listHulls } from '../platform/calls.js';
import { HULL_COLUMNS, noHulls } from './hull-list.js';

/** All hulls, the newest first, or those whose number or HIN holds what was typed. */
export const hullsPage = ({ query }: Route): Page => {
  const search = query.get('search') ?? '';
  const place = h('div', {}, list(search));
  const form = filterForm(
    'Show',
    [{ name: 'search', label: 'Part of a hull number or HIN', control: line(search) }],
    (chosen) => {
      keepInAddress(['hulls'], chosen);
      place.replaceChildren(list(chosen['search'] ?? ''));
    },
  );
  return { title: 'Hulls', content: [heading('Hulls'), form, place] };
};

const list = (search: string): HTMLElement =>
  pagedTable({
    what: 'hulls',
    caption:
      search === '' ? 'Hulls, the newest first' : `Hulls whose number or HIN holds “${search}”, the newest first`,
    columns: HULL_COLUMNS,
    load: (cursor) => listHulls({ search, limit: '50', cursor }),
    empty: () =>
      search === ''
        ? noHulls()
        : empty(
            `No hull number or HIN holds “${search}”. Type less of it, or see `,
            link('#/search', 'Search'),
            ' for lots.',
          ),
  });
