import type { LotView } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { section } from '../platform/page.js';
import { table } from '../platform/table.js';
import { amountWords, figure, moment, percent } from '../platform/words.js';
import { lotState } from '../marks/mark.js';
import { lotLink } from './lot-list.js';

/** What was put into a lot that was made here. */
export const inputs = ({ inputs: rows }: LotView): Child =>
  rows.length === 0
    ? null
    : section(
        'What it was made of',
        table(
          'Lots put into this one',
          [
            { head: 'Lot', cell: ({ lot }) => lotLink(lot), names: true, class: 'n' },
            { head: 'Amount', cell: ({ amount }) => amountWords(amount), class: 'r' },
            { head: 'Basis', cell: ({ amount }) => amount.basis },
          ],
          rows,
        ),
      );

/** The received lots in a lot, whatever way they took, the largest first. */
export const composition = ({ origin, composition: rows }: LotView): Child =>
  origin === 'received'
    ? null
    : section(
        'Received lots in it',
        table(
          'Mass fractions of received lots',
          [
            {
              head: 'Lot',
              cell: ({ source }) => (source === null ? 'all others, under 1e-9 each' : lotLink(source)),
              names: true,
              class: 'n',
            },
            { head: 'Role', cell: ({ role }) => role },
            { head: 'Fraction', cell: ({ fraction }) => percent(fraction), class: 'r' },
          ],
          [...rows].sort((a, b) => b.fraction - a.fraction),
        ),
        h('p', { class: 'note soft' }, 'Assumes a well-mixed tank. The fractions add up to 100 %.'),
      );

/** What was decided about a lot, and why. */
export const states = ({ states: rows }: LotView): Child =>
  rows.length === 0
    ? null
    : section(
        'States it has had',
        table(
          'States, the first one first',
          [
            { head: 'State', cell: ({ state }) => lotState(state), names: true },
            { head: 'Since', cell: ({ happenedAt }) => moment(happenedAt) },
            { head: 'Reason', cell: ({ reason }) => reason },
          ],
          rows,
        ),
      );

/** Values as on the supplier's certificate. */
export const certificate = ({ certificate: values }: LotView): Child =>
  Object.keys(values).length === 0
    ? null
    : section(
        "Supplier's certificate",
        table(
          'Values as on the certificate',
          [
            { head: 'What', cell: ([what]) => what, names: true },
            { head: 'Value', cell: ([, value]) => (typeof value === 'number' ? figure(value, 9) : value), class: 'r' },
          ],
          Object.entries(values),
        ),
      );
