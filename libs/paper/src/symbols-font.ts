import { writeTrueType, type Glyph } from './truetype.js';

type Point = readonly [number, number];

/**
 * A font of the signs that readings need and the text families lack: micro, comparison signs, almost equal, arrow.
 *
 * Drawn here as strokes with round ends, to the measures of the text family (ascent 984, descent -316 of 1000), so
 * that a limit such as "at least 36" can be written with its sign and is still found by a text search.
 */
export const symbolsFont = (bold: boolean): Uint8Array =>
  writeTrueType(
    { name: bold ? 'HullRecordSigns-Bold' : 'HullRecordSigns-Regular', bold, ascent: 984, descent: -316 },
    SIGNS.map(({ codePoints, strokes }) => glyph(codePoints, strokes, bold ? 116 : 76)),
  );

const SIGNS: readonly { codePoints: readonly number[]; strokes: readonly (readonly Point[])[] }[] = [
  {
    codePoints: [0x00b5, 0x03bc],
    strokes: [
      [
        [120, -170],
        [120, 480],
      ],
      [
        [120, 190],
        [146, 90],
        [210, 38],
        [290, 38],
        [370, 90],
        [440, 200],
      ],
      [
        [440, 480],
        [440, 40],
      ],
    ],
  },
  {
    codePoints: [0x2265],
    strokes: [
      [
        [100, 570],
        [480, 390],
        [100, 210],
      ],
      [
        [100, 70],
        [480, 70],
      ],
    ],
  },
  {
    codePoints: [0x2264],
    strokes: [
      [
        [480, 570],
        [100, 390],
        [480, 210],
      ],
      [
        [100, 70],
        [480, 70],
      ],
    ],
  },
  {
    codePoints: [0x2260],
    strokes: [
      [
        [90, 410],
        [490, 410],
      ],
      [
        [90, 230],
        [490, 230],
      ],
      [
        [200, 80],
        [380, 560],
      ],
    ],
  },
  {
    codePoints: [0x2248],
    strokes: [200, 390].map((y): readonly Point[] => [
      [80, y],
      [150, y + 50],
      [220, y + 50],
      [360, y - 10],
      [430, y - 10],
      [500, y + 40],
    ]),
  },
  {
    codePoints: [0x2192],
    strokes: [
      [
        [80, 330],
        [500, 330],
      ],
      [
        [350, 480],
        [500, 330],
        [350, 180],
      ],
    ],
  },
];

const glyph = (codePoints: readonly number[], strokes: readonly (readonly Point[])[], width: number): Glyph => ({
  codePoints,
  advance: 580,
  contours: strokes.flatMap((points) => stroke(points, width / 2)),
});

/** A polyline of a given half width as overlapping bars and discs; filled by the nonzero rule it is one shape. */
const stroke = (points: readonly Point[], half: number): readonly (readonly Point[])[] => [
  ...points.slice(1).map((to, i) => bar(points[i] ?? to, to, half)),
  ...points.map((centre) => disc(centre, half)),
];

const bar = ([x1, y1]: Point, [x2, y2]: Point, half: number): readonly Point[] => {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const dx = (-(y2 - y1) / length) * half;
  const dy = ((x2 - x1) / length) * half;
  return clockwise([
    [x1 + dx, y1 + dy],
    [x2 + dx, y2 + dy],
    [x2 - dx, y2 - dy],
    [x1 - dx, y1 - dy],
  ]);
};

const disc = ([x, y]: Point, radius: number): readonly Point[] =>
  clockwise(
    Array.from({ length: 12 }, (_, i): Point => {
      const angle = (i * Math.PI) / 6;
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    }),
  );

const clockwise = (points: readonly Point[]): readonly Point[] => {
  const rounded = points.map(([x, y]): Point => [Math.round(x), Math.round(y)]);
  const area = rounded.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = rounded[(i + 1) % rounded.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);
  return area > 0 ? rounded.toReversed() : rounded;
};
