import type { LotListItem } from '@hull-record/contracts';
import { empty, link } from '../platform/page.js';
import { hrefOf } from '../platform/route.js';
import type { Column } from '../platform/table.js';
import { amountWords, day } from '../platform/words.js';
import { lotState } from '../marks/mark.js';

export const lotLink = (code: string): HTMLAnchorElement => link(hrefOf(['lots', code]), code);

/** How a lot came to be. */
export const ORIGIN_WORDS: Readonly<Record<string, string>> = {
  received: 'received from a supplier',
  mixed: 'mixed here',
  tank: 'contents of a tank',
  cut: 'kit cut here',
};

/** Lots as lists show them. */
export const LOT_COLUMNS: readonly Column<LotListItem>[] = [
  { head: 'Lot', cell: ({ code }) => lotLink(code), names: true, class: 'n' },
  { head: 'Material', cell: ({ materialName, origin }) => materialName ?? ORIGIN_WORDS[origin] ?? origin },
  { head: 'Supplier', cell: ({ supplier }) => supplier ?? '–' },
  { head: "Supplier's lot", cell: ({ supplierLot }) => supplierLot ?? '–', class: 'n' },
  { head: 'Amount', cell: ({ amount }) => amountWords(amount), class: 'r' },
  { head: 'Basis', cell: ({ amount }) => amount.basis },
  { head: 'State', cell: ({ state }) => lotState(state) },
  { head: 'Since', cell: ({ happenedAt }) => day(happenedAt) },
];

/** Said where no lot is recorded at all. */
export const noLots = (): HTMLElement =>
  empty(
    'No lot is recorded yet. First register a material, then receive a lot of it: the ',
    link('/api/docs', 'API page'),
    ' shows both calls.',
  );
