import { h, type Child } from '../platform/dom.js';
import { lotLink } from './lot-list.js';

/** The way of a received lot into a place: directly, or through which buckets, tank fills and kits. */
export const pathWords = (steps: readonly { readonly lot: string; readonly origin: string }[]): Child =>
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
