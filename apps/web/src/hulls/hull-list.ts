import type { HullListItem, Whereabouts } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { empty, link } from '../platform/page.js';
import { hrefOf } from '../platform/route.js';
import type { Column } from '../platform/table.js';
import { day } from '../platform/words.js';
import { mark } from '../marks/mark.js';

export const hullLink = (number: string): HTMLAnchorElement => link(hrefOf(['hulls', number]), number);

/** Where a hull is now and since when. */
export const whereabouts = ({ what, dealer, since }: Whereabouts): Child => [
  dealer === null ? what : `${what} ${dealer}`,
  ', ',
  day(since),
];

const layers = ({ layersMade, layersScheduled }: HullListItem): Child =>
  mark(layersMade >= layersScheduled ? 'made' : 'to come', `${layersMade} of ${layersScheduled}`);

const defects = ({ openDefects }: HullListItem): Child =>
  openDefects === 0 ? 'none' : mark('outside', `${openDefects} open`);

/** Hulls as lists show them. */
export const HULL_COLUMNS: readonly Column<HullListItem>[] = [
  { head: 'Hull', cell: ({ number }) => hullLink(number), names: true, class: 'n' },
  { head: 'HIN', cell: ({ hin }) => (hin === null ? 'not yet' : h('span', { class: 'n' }, hin)) },
  { head: 'Model', cell: ({ modelName }) => modelName },
  { head: 'Begun', cell: ({ startedAt }) => day(startedAt) },
  { head: 'Layers made', cell: layers },
  { head: 'Defects', cell: defects },
  { head: 'Now', cell: ({ now }) => whereabouts(now) },
];

/** Said where no hull is recorded at all. */
export const noHulls = (): HTMLElement =>
  empty(
    'No hull is recorded yet. First register a material, a model with its schedule and a mold, receive the lots, and then start a hull: the ',
    link('/api/docs', 'API page'),
    ' shows each call.',
  );
