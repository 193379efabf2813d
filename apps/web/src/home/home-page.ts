import { h } from '../platform/dom.js';
import { pagedTable } from '../platform/paged-table.js';
import { heading, link, section, type Page } from '../platform/page.js';
import { listHulls } from '../platform/calls.js';
import { HULL_COLUMNS, noHulls } from '../hulls/hull-list.js';
import { demoProgress } from './demo-progress.js';

const WAYS = [
  ['#/hulls', 'Hulls', 'Each hull: its layers, lots, readings, defects and repairs, and the build record as PDF.'],
  ['#/lots', 'Lots', 'Each lot of material: what it is made of, and the hulls that hold it.'],
  ['#/search', 'Search', 'Find a hull or a lot by its number; find the lots that some hulls share.'],
  ['/api/docs', 'API page', 'How facts are recorded until this page can: each call with its fields.'],
] as const;

/** What this is, where to go, how far the demo is, and the newest hulls. */
export const homePage = (): Page => ({
  title: 'Start',
  content: [
    heading('What each hull is made of'),
    h(
      'p',
      { class: 'lead' },
      'Which lot went into which layer of which hull, what was measured, what was found wrong and how it was put right. ' +
        'When a lot turns out bad, the hulls that hold it.',
    ),
    demoProgress(),
    section(
      'Where to go',
      h(
        'ul',
        { class: 'ways' },
        WAYS.map(([href, name, words]) => h('li', {}, link(href, name), h('span', {}, words))),
      ),
    ),
    section(
      'Newest hulls',
      pagedTable({
        what: 'hulls',
        caption: 'The hulls begun last',
        columns: HULL_COLUMNS,
        load: (cursor) => listHulls({ limit: '5', cursor }),
        empty: noHulls,
      }),
    ),
  ],
});
