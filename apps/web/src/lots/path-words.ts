import { h, type Child } from '../platform/dom.js';
import { folded } from '../platform/folded.js';
import { lotLink } from './lot-list.js';

type Path = readonly { readonly lot: string; readonly origin: string }[];

/** The ways of a received lot into a place, the shortest first: directly, or through which buckets, tank fills and kits. */
export const pathsWords = (paths: readonly Path[]): Child => {
  const ways = [...paths].sort((a, b) => a.length - b.length).map(pathWords);
  return ways.length === 1 ? ways : folded(ways, 1, 'ways');
};

const pathWords = (steps: Path): Child =>
  steps.length < 2
    ? 'directly'
    : [
        'by ',
        h(
          'span',
          { class: 'n' },
          steps.map(({ lot }, i) => [i === 0 ? null : ' → ', lotLink(lot)]),
        ),
      ];
