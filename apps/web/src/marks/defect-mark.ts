import type { DefectView } from '@hull-record/contracts';
import { h, s, type Child } from '../platform/dom.js';

type State = DefectView['state'];

const path = (d: string, name?: string) => s('path', { d, class: name });

/** Nearly a ring, drawn by hand: chalk on the hull. */
const CHALK = 'M2 -9C-6 -10.5 -10.4 -5 -9.6 1C-9 7 -3.6 10.4 2.4 9.4C8 8.4 10.6 3 9.6 -2.4C8.8 -7 4.4 -9.8 -1.4 -9.2';

const RINGS: Readonly<Record<State, () => readonly SVGElement[]>> = {
  open: () => [path(CHALK, 'bold')],
  'repair to be accepted': () => [s('circle', { r: 9, 'stroke-dasharray': '4 3' })],
  repaired: () => [s('circle', { r: 9 }), path('M-10.5 10.5L10.5 -10.5')],
  concession: () => [s('circle', { r: 9 }), path('M6 -6V-16L15 -12.5L6 -9', 'flag')],
  scrapped: () => [s('circle', { r: 9 }), path('M-6.4 -6.4L6.4 6.4M6.4 -6.4L-6.4 6.4')],
};

/** The ring of a defect by its state, as on the hull map. */
export const defectRing = (state: State): SVGElement =>
  s('svg', { class: 'ring', viewBox: '-17 -17 34 34', 'aria-hidden': 'true' }, RINGS[state]());

/** The ring of a defect and words beside it. */
export const defectMark = (state: State, words: string): Child =>
  h('span', { class: state === 'open' ? 'state s-outside' : 'state' }, defectRing(state), h('span', {}, words));
