import type { AmountView, UsedView } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { folded } from '../platform/folded.js';
import { amountWords, percent } from '../platform/words.js';
import { lotLink } from '../lots/lot-list.js';

type Used = { readonly lot: string; readonly amount: AmountView } & Partial<UsedView>;

/** What was used: each lot with its amount and how that is known, and the suppliers' lots behind it. */
export const usedList = (used: readonly Used[]): Child =>
  used.length === 0 ? 'none recorded' : h('ul', { class: 'plain' }, used.map(one));

const one = ({ lot, amount, tank, supplierLots = [], corrected }: Used): Child =>
  h(
    'li',
    {},
    h('span', { class: 'n' }, lotLink(lot)),
    ` ${amountWords(amount)}, ${amount.basis}`,
    tank ? `, from tank ${tank}` : null,
    h('div', { class: 'note soft' }, behindIt(supplierLots), corrected ? ' Corrected.' : null),
  );

/** The suppliers' lots behind a lot, the largest first: a tank holds a little of every fill it ever had. */
const behindIt = (lots: UsedView['supplierLots']): Child =>
  folded([...lots].sort((a, b) => b.fraction - a.fraction).map(behind), 2, "suppliers' lots");

const behind = ({ supplierLot, material, fraction }: UsedView['supplierLots'][number]): string =>
  `${material}, ${supplierLot}${fraction < 1 - 1e-9 ? ` (${percent(fraction)})` : ''}`;
