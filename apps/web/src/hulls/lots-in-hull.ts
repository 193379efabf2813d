import type { LotInHull } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { empty, section } from '../platform/page.js';
import { folded } from '../platform/folded.js';
import { recomputingNote } from '../platform/recomputing-note.js';
import { region } from '../platform/region.js';
import { table, type Column } from '../platform/table.js';
import { kilograms, percent } from '../platform/words.js';
import { lotsOfHull } from '../platform/calls.js';
import { lotState } from '../marks/mark.js';
import { lotLink } from '../lots/lot-list.js';
import { placeName } from '../lots/place-name.js';
import { pathsWords } from '../lots/path-words.js';

/** The received lots in a hull, with where and by which way each came there. */
export const lotsIn = (number: string): HTMLElement =>
  section(
    'Lots in this hull',
    region({
      what: `the lots in hull ${number}`,
      load: () => lotsOfHull(number),
      show: ({ lots, assumes, recomputing }) =>
        lots.length === 0
          ? empty('No lot is recorded in this hull yet. Lots appear once a layer says what was used in it.')
          : [
              recomputingNote(recomputing),
              table('Received lots, by role', COLUMNS, lots),
              h('p', { class: 'note soft' }, assumes),
            ],
    }),
  );

const COLUMNS: readonly Column<LotInHull>[] = [
  { head: 'Lot', cell: ({ lot }) => lotLink(lot), names: true, class: 'n' },
  {
    head: "Supplier's lot",
    cell: ({ supplierLot, supplier }) => [
      h('span', { class: 'n' }, supplierLot ?? '–'),
      supplier === null ? null : `, ${supplier}`,
    ],
  },
  { head: 'Material', cell: ({ material, role }) => `${material ?? 'unknown'} (${role})` },
  { head: 'State', cell: ({ state }) => (state === null ? '–' : lotState(state)) },
  { head: 'In all', cell: ({ kg }) => kilograms(kg), class: 'r' },
  { head: 'Basis', cell: ({ basis }) => basis },
  { head: 'Largest layer share', cell: ({ largestLayerShare }) => percent(largestLayerShare), class: 'r' },
  { head: 'Where, and by which way', cell: ({ places }) => folded(places.map(place), 3, 'places') },
];

const place = ({ part, place: name, kind, kg, share, paths }: LotInHull['places'][number]): Child => [
  h('span', { class: 'n' }, part),
  ` ${kind === 'layer' ? 'layer ' : ''}${placeName(kind, name)}: ${kilograms(kg)}, ${percent(share)}, `,
  h('span', { class: 'soft' }, pathsWords(paths)),
];
