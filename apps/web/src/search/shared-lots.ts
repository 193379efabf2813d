import type { SharedLot } from '@hull-record/contracts';
import { h } from '../platform/dom.js';
import { filterForm } from '../platform/filter-form.js';
import { empty } from '../platform/page.js';
import { pagedTable } from '../platform/paged-table.js';
import { keepInAddress } from '../platform/route.js';
import type { Column } from '../platform/table.js';
import { counted } from '../platform/words.js';
import { sharedLots } from '../platform/calls.js';
import { lotLink } from '../lots/lot-list.js';

/** Asks which lots some hulls share. Numbers may be parted by commas, spaces or lines. */
export const sharedLotsForm = (first: string): readonly HTMLElement[] => {
  const place = h('div', {}, answer(numbersIn(first)));
  const control = h('textarea', { rows: 3, spellcheck: 'false' }, numbersIn(first).join('\n'));
  const field = { name: 'hulls', label: 'Hull numbers or HINs', control, hint: 'One a line, or parted by commas.' };
  const form = filterForm('Show shared lots', [field], (chosen) => {
    const numbers = numbersIn(chosen['hulls'] ?? '');
    keepInAddress(['search'], { hulls: numbers.join(',') });
    place.replaceChildren(answer(numbers));
  });
  return [form, place];
};

const numbersIn = (text: string): readonly string[] => [
  ...new Set(
    text
      .split(/[,;\n]/)
      .map((each) => each.trim())
      .filter(Boolean),
  ),
];

const NOTE =
  'The lots that most of these hulls hold come first; among those, the ones that fewest others hold. Assumes a well-mixed tank. ' +
  'A shared lot is associated with what these hulls have in common; that is no finding about the lot.';

const answer = (hulls: readonly string[]): HTMLElement =>
  hulls.length === 0
    ? empty('Enter the hulls that came back with a like fault, two or more, to see what they have in common.')
    : pagedTable({
        what: 'shared lots',
        caption: `Lots held by ${counted(hulls.length, 'hull')} entered`,
        columns: columns(hulls.length),
        load: (cursor) => sharedLots(hulls, cursor),
        empty: () => empty('No lot is recorded in these hulls. Record what was used in their layers first.'),
        note: NOTE,
      });

const columns = (asked: number): readonly Column<SharedLot>[] => [
  { head: 'Lot', cell: ({ lot }) => lotLink(lot), names: true, class: 'n' },
  { head: 'Material', cell: ({ material, role }) => `${material ?? 'unknown'} (${role})` },
  { head: 'Supplier', cell: ({ supplier }) => supplier ?? '–' },
  { head: "Supplier's lot", cell: ({ supplierLot }) => supplierLot ?? '–', class: 'n' },
  { head: 'Of these hulls', cell: ({ ofThese }) => `${ofThese} of ${asked}`, class: 'r' },
  { head: 'Other hulls', cell: ({ ofOthers }) => String(ofOthers), class: 'r' },
];
