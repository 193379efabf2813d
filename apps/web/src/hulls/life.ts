import type { HullView } from '@hull-record/contracts';
import type { Child } from '../platform/dom.js';
import { section } from '../platform/page.js';
import { table } from '../platform/table.js';
import { moment } from '../platform/words.js';

/** The facts in the life of a boat, the first one first. */
export const lifeOf = ({ life }: HullView): Child =>
  section(
    'Life',
    table(
      'What happened to this hull',
      [
        { head: 'What', cell: ({ what, dealer }) => (dealer === null ? what : `${what} ${dealer}`), names: true },
        { head: 'When', cell: ({ happenedAt }) => moment(happenedAt) },
        { head: 'Entered by', cell: ({ by }) => by, class: 'n' },
        { head: 'Note', cell: ({ note }) => note ?? '–' },
      ],
      life,
    ),
  );

/** Every number the hull ever had; each still leads here. */
export const numbersOf = ({ numbers }: HullView): Child =>
  section(
    'Numbers',
    table(
      'Numbers that lead to this hull',
      [
        { head: 'Number', cell: ({ number }) => number, names: true, class: 'n' },
        { head: 'Kind', cell: ({ kind }) => kind },
        { head: 'Since', cell: ({ happenedAt }) => moment(happenedAt) },
        { head: 'Reason', cell: ({ reason }) => reason ?? '–' },
      ],
      numbers,
    ),
  );
