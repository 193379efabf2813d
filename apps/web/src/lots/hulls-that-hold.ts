import type { ReachedHull } from '@hull-record/contracts';
import { h, joined, type Child } from '../platform/dom.js';
import { filterForm, line, choice } from '../platform/filter-form.js';
import { empty } from '../platform/page.js';
import { pagedTable } from '../platform/paged-table.js';
import { keepInAddress, type Route } from '../platform/route.js';
import type { Column } from '../platform/table.js';
import { days, kilograms, percent } from '../platform/words.js';
import { hullsOfLot } from '../platform/calls.js';
import { placeName } from './place-name.js';
import { hullLink, whereabouts } from '../hulls/hull-list.js';

const ASSUMES =
  'Assumes a well-mixed tank. The share is kilograms of this lot in a layer, out of all lots of the same role in that layer; ' +
  'the largest of the hull is shown. The basis is the weakest on the way. To hold a lot is not to be at fault.';

/** The hulls that hold some of a lot, with a least share to leave the small ones out. */
export const hullsThatHold = (lot: string, { path, query }: Route): readonly HTMLElement[] => {
  const least = query.get('least') ?? '';
  const below = query.get('below') ?? '';
  const place = h('div', {}, list(lot, least, below));
  const fields = [
    {
      name: 'least',
      label: 'Least share of a layer, %',
      control: line(least, { type: 'number', min: '0', max: '100', step: 'any', inputmode: 'decimal' }),
    },
    {
      name: 'below',
      label: 'Hulls with less than 1e-9',
      control: choice(below, [['members only', 'name them too']], 'leave them out'),
    },
  ];
  const form = filterForm('Show', fields, (chosen) => {
    keepInAddress(path, chosen);
    place.replaceChildren(list(lot, chosen['least'] ?? '', chosen['below'] ?? ''));
  });
  return [form, place];
};

const list = (lot: string, least: string, below: string): HTMLElement =>
  pagedTable({
    what: 'hulls and parts',
    caption: `Hulls and parts that hold lot ${lot}`,
    columns: COLUMNS,
    load: (cursor) =>
      hullsOfLot(lot, {
        ...(least === '' ? {} : { minShare: String(Number(least) / 100) }),
        belowFloor: below,
        limit: '100',
        cursor,
      }),
    empty: () =>
      empty(
        least === ''
          ? 'No hull on record holds any of this lot.'
          : `No hull holds this lot at a share of ${least} % or more of a layer. Ask for a smaller share to see the rest.`,
      ),
    note: ASSUMES,
  });

const trace = 'trace, under 1e-9';
const whole = (value: number | null, possibly: boolean, words: (value: number) => string): string => {
  if (value !== null) return words(value);
  return possibly ? 'possibly: unidentified material that may be of it' : trace;
};

const COLUMNS: readonly Column<ReachedHull>[] = [
  {
    head: 'Hull',
    cell: ({ hull, parts }) =>
      hull === null ? `part ${parts.map(({ part }) => part).join(', ')}, in no hull` : hullLink(hull),
    names: true,
    class: 'n',
  },
  { head: 'Of this lot', cell: ({ kg, possibly }) => whole(kg, possibly, kilograms), class: 'r' },
  { head: 'Basis', cell: ({ basis }) => basis ?? '–' },
  {
    head: 'Largest layer share',
    cell: ({ largestLayerShare, possibly }) => (possibly ? 'not known' : whole(largestLayerShare, false, percent)),
    class: 'r',
  },
  { head: 'Where in it', cell: ({ parts }) => places(parts) },
  { head: 'Used', cell: ({ firstAt, lastAt }) => (firstAt === null || lastAt === null ? '–' : days(firstAt, lastAt)) },
  { head: 'Where it is now', cell: ({ now }) => (now === null ? '–' : whereabouts(now)) },
];

const places = (parts: ReachedHull['parts']): Child =>
  joined(
    parts.map(({ part, places: found }) => [
      h('span', { class: 'n' }, part),
      ` ${found.map(({ place, kind }) => placeName(kind, place)).join(', ')}`,
    ]),
    '; ',
  );
