import type { HullView, Obstacle } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { section } from '../platform/page.js';
import { table } from '../platform/table.js';
import { counted, moment } from '../platform/words.js';
import { mark, stamp } from '../marks/mark.js';

type Release = HullView['release'];

/** Whether the hull is released, could be, or what keeps it. */
export const releaseLine = ({ releasedAt, inTheWay: obstacles }: Release): Child => {
  if (releasedAt !== null && obstacles.length === 0)
    return h('p', { class: 'verdict' }, stamp('Released ', moment(releasedAt)));
  if (releasedAt !== null)
    return h(
      'p',
      { class: 'verdict' },
      stamp('Released ', moment(releasedAt)),
      ' ',
      mark('near', 'open matters since'),
    );
  if (obstacles.length === 0) return h('p', { class: 'verdict' }, mark('inside', 'Nothing is in the way of release.'));
  return h(
    'p',
    { class: 'verdict' },
    mark('outside', `Not ready for release: ${counted(obstacles.length, 'thing')} in the way.`),
  );
};

/** Everything in the way of release, each with what it is about; nothing when there is nothing. */
export const inTheWay = ({ inTheWay: obstacles }: Release): Child =>
  obstacles.length === 0
    ? null
    : section(
        'In the way of release',
        table<Obstacle>(
          'To settle before this hull can be released',
          [
            { head: 'What', cell: ({ detail }) => detail, names: true },
            { head: 'Part', cell: ({ part }) => part ?? 'whole hull', class: 'n' },
            { head: 'Layer', cell: ({ layer }) => layer ?? '–', class: 'n' },
          ],
          obstacles,
        ),
      );
