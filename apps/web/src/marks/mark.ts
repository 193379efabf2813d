import { h, s, type Child } from '../platform/dom.js';

/** The shapes that say how something stands. Each always comes with its word. */
export type Shape = 'inside' | 'near' | 'outside' | 'made' | 'to come' | 'tape' | 'stopped' | 'none';

const ring = (attributes = {}) => s('circle', { r: 8, ...attributes });
const path = (d: string) => s('path', { d });

const SHAPES: Readonly<Record<Shape, () => readonly SVGElement[]>> = {
  inside: () => [ring(), path('M-4 0L-1 3.4L4.4 -3.6')],
  made: () => [ring(), path('M-4 0L-1 3.4L4.4 -3.6')],
  near: () => [path('M0 -8.5L9 7.5H-9Z'), path('M0 -3V2M0 4.4V5.4')],
  outside: () => [s('rect', { x: -8, y: -8, width: 16, height: 16 }), path('M-4 -4L4 4M4 -4L-4 4')],
  'to come': () => [ring({ 'stroke-dasharray': '3.1 3.1' })],
  tape: () => [s('rect', { x: -10, y: -5, width: 20, height: 10 }), path('M-8 5L-2 -5M-1 5L5 -5M6 5L10 -1.6')],
  stopped: () => [path('M-3.5 -8.5H3.5L8.5 -3.5V3.5L3.5 8.5H-3.5L-8.5 3.5V-3.5Z'), path('M-4.5 0H4.5')],
  none: () => [path('M-5 0H5')],
};

/** A shape alone, for where its word stands beside it anyway. */
export const shape = (kind: Shape): SVGElement =>
  s(
    'svg',
    { class: `shape m-${kind.replace(' ', '-')}`, viewBox: '-11 -11 22 22', 'aria-hidden': 'true' },
    SHAPES[kind](),
  );

/** A shape and its words: the words carry the meaning, the shape is found faster, the colour comes last. */
export const mark = (kind: Shape, ...words: readonly Child[]): HTMLElement =>
  h('span', { class: `state s-${kind.replace(' ', '-')}` }, shape(kind), h('span', {}, ...words));

/** Something signed: who, and when. */
export const stamp = (...words: readonly Child[]): HTMLElement => h('span', { class: 'stamp' }, ...words);

/** A strip of tape: something held, or not yet signed. */
export const tape = (words: string): HTMLElement => h('span', { class: 'tape' }, words);

const LOT_SHAPES: Readonly<Record<string, Shape>> = {
  released: 'inside',
  quarantined: 'tape',
  held: 'tape',
  rejected: 'stopped',
};

/** The state of a lot. */
export const lotState = (state: string): HTMLElement =>
  h('span', { class: 'nb' }, mark(LOT_SHAPES[state] ?? 'none', state));
