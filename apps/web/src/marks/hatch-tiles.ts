/** A hatch: each kind of material has the same one everywhere, on paper too. */
export type Hatch = 'gel' | 'mat' | 'weave' | 'core' | 'putty' | 'board' | 'other';

/** The tile that a hatch repeats: its size, and what is in it as SVG path data or dots. */
export interface HatchTile {
  readonly width: number;
  readonly height: number;
  readonly paths: readonly string[];
  readonly dots?: readonly { readonly x: number; readonly y: number; readonly r: number }[];
}

/** A fixed sequence in 0..1: scattered to look at, and the same at every load. */
const scattered = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
};

/** One thing in each cell of a grid of 6 by 6, so that none falls across the edge of the tile. */
const cells = <T>(draw: (x: number, y: number, next: () => number) => T, seed: number, step: number): readonly T[] => {
  const next = scattered(seed);
  return Array.from({ length: 36 }, (_, i) =>
    draw((i % 6) * step + 1.5 + next() * (step - 3), Math.floor(i / 6) * step + 1.5 + next() * (step - 3), next),
  );
};

const crumb = (x: number, y: number, next: () => number): string => {
  const turn = next() * 6.28;
  const corner = (i: number): string => `${x + 2 * Math.cos(turn + i * 2.1)} ${y + 2 * Math.sin(turn + i * 2.1)}`;
  return `M${corner(0)}L${corner(1)}L${corner(2)}Z`;
};

const HEXAGONS =
  'M0 6.2L5.37 3.1V-3.1M10.74 6.2L5.37 3.1M0 6.2V12.4L5.37 15.5L10.74 12.4V6.2M5.37 15.5V21.7M0 12.4L-5.37 15.5M10.74 12.4L16.1 15.5';

/** The tiles of all hatches, in CSS pixels. */
export const HATCH_TILES: Readonly<Record<Hatch, HatchTile>> = {
  gel: { width: 8, height: 8, paths: ['M0 0H8V8H0Z'] },
  mat: { width: 36, height: 36, paths: [], dots: cells((x, y, next) => ({ x, y, r: 0.8 + next() * 0.5 }), 7, 6) },
  weave: { width: 9, height: 9, paths: ['M0 0L9 9M9 0L0 9'] },
  core: { width: 10.74, height: 18.6, paths: [HEXAGONS] },
  putty: { width: 48, height: 48, paths: cells(crumb, 11, 8) },
  board: {
    width: 64,
    height: 16,
    paths: ['M0 .5H64M0 8.5H64M20 .5V8.5M52 8.5V16.5M4 4.5H14M26 3.5H44M2 12.5H34M56 11.5H62'],
  },
  other: { width: 8, height: 8, paths: ['M4 0V8'] },
};
