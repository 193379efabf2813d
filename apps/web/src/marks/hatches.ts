import { s } from '../platform/dom.js';

/** A hatch: each kind of material has the same one everywhere, on paper too. */
export type Hatch = 'gel' | 'mat' | 'weave' | 'core' | 'putty' | 'board' | 'other';

/** A fixed sequence in 0..1: scattered to look at, and the same at every load. */
const scattered = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
};

const pattern = (id: Hatch, width: number, height: number, ...content: readonly SVGElement[]): SVGElement =>
  s('pattern', { id: `h-${id}`, class: `hatch-${id}`, width, height, patternUnits: 'userSpaceOnUse' }, content);

const path = (d: string): SVGElement => s('path', { d });

/** One dot or stroke in each cell of a grid, so that none falls across the edge of the tile. */
const cells = (
  draw: (x: number, y: number, next: () => number) => SVGElement,
  seed: number,
  step: number,
): SVGElement[] => {
  const next = scattered(seed);
  return Array.from({ length: 36 }, (_, i) =>
    draw((i % 6) * step + 1.5 + next() * (step - 3), Math.floor(i / 6) * step + 1.5 + next() * (step - 3), next),
  );
};

const dot = (cx: number, cy: number, next: () => number): SVGElement => s('circle', { cx, cy, r: 0.8 + next() * 0.5 });

const crumb = (x: number, y: number, next: () => number): SVGElement => {
  const turn = next() * 6.28;
  const corner = (i: number): string => `${x + 2 * Math.cos(turn + i * 2.1)} ${y + 2 * Math.sin(turn + i * 2.1)}`;
  return path(`M${corner(0)}L${corner(1)}L${corner(2)}Z`);
};

const HEXAGONS =
  'M0 6.2L5.37 3.1V-3.1M10.74 6.2L5.37 3.1M0 6.2V12.4L5.37 15.5L10.74 12.4V6.2M5.37 15.5V21.7M0 12.4L-5.37 15.5M10.74 12.4L16.1 15.5';

/** All hatches, to stand once in the page; drawings fill with `url(#h-mat)` and the like. */
export const hatchDefinitions = (): SVGElement =>
  s(
    'svg',
    { width: 0, height: 0, class: 'definitions', 'aria-hidden': 'true' },
    s(
      'defs',
      {},
      pattern('gel', 8, 8, s('rect', { width: 8, height: 8 })),
      pattern('mat', 36, 36, ...cells(dot, 7, 6)),
      pattern('weave', 9, 9, path('M0 0L9 9M9 0L0 9')),
      pattern('core', 10.74, 18.6, path(HEXAGONS)),
      pattern('putty', 48, 48, ...cells(crumb, 11, 8)),
      pattern('board', 64, 16, path('M0 .5H64M0 8.5H64M20 .5V8.5M52 8.5V16.5M4 4.5H14M26 3.5H44M2 12.5H34M56 11.5H62')),
      pattern('other', 8, 8, path('M4 0V8')),
    ),
  );
