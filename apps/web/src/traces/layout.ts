import type { TraceGraph, TraceNode } from '@hull-record/contracts';
import { columnsOf, type ColumnKind, type NodeColumn } from './columns.js';

/** A node where it is drawn, CSS pixels: its bar is as high as its kilograms; its row has room for its words. */
export interface Box {
  readonly node: TraceNode;
  readonly column: number;
  readonly x: number;
  readonly y: number;
  readonly bar: number;
  readonly row: number;
  /** How many lines of words it has. */
  readonly lines: 0 | 1 | 2;
}

/** Kilograms on their way, as SVG path data. */
export interface Ribbon {
  readonly from: string;
  readonly to: string;
  readonly d: string;
  /** Thinner than a hair: drawn as a line, which costs half. */
  readonly thin: boolean;
}

/** The picture of a trace, ready to be drawn. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly columns: readonly { readonly kind: ColumnKind; readonly x: number; readonly count: number }[];
  readonly boxes: ReadonlyMap<string, Box>;
  readonly ribbons: readonly Ribbon[];
}

export const BAR = 14;
/** From one column to the next, and room for the words of the last. */
const PITCH = 178;
const LAST = 130;
const TOP = 30;
/** The fullest column is about so high, if its words do not need more. */
const HEIGHT = 460;
const GAP = 7;

/** Lays out a trace: bars and ribbons as wide as their kilograms, on one scale. */
export const layOut = (graph: Pick<TraceGraph, 'nodes' | 'links'>): Picture => {
  const columns = columnsOf(graph);
  const throughput = throughputOf(graph);
  const most = Math.max(
    ...columns.map(({ nodes }) => nodes.reduce((sum, { id }) => sum + (throughput.get(id) ?? 0), 0)),
  );
  const scale = most > 0 ? HEIGHT / most : 0;
  const boxes = new Map<string, Box>();
  const place = (column: NodeColumn, index: number, order: readonly TraceNode[]): void => {
    let y = TOP;
    const lines = linesIn(column);
    for (const node of order) {
      const bar = Math.max(1.5, (throughput.get(node.id) ?? 0) * scale);
      const row = Math.max(bar, [3, 16, 32][lines] ?? 3);
      boxes.set(node.id, { node, column: index, x: index * PITCH, y, bar, row, lines });
      y += row + (lines === 0 ? 2 : GAP);
    }
  };
  columns.forEach((column, index) => {
    const keep = index === 0 || column.kind === 'tank';
    place(column, index, keep ? column.nodes : byNeighbours(column.nodes, graph.links, boxes, 'to'));
  });
  // What stands first is put in order by where it goes, once that is known.
  const [first] = columns;
  if (first !== undefined) place(first, 0, byNeighbours(first.nodes, graph.links, boxes, 'from'));
  return {
    width: Math.max(0, columns.length - 1) * PITCH + LAST,
    height: Math.max(TOP, ...[...boxes.values()].map(({ y, row }) => y + row)) + GAP,
    columns: columns.map(({ kind, nodes }, index) => ({ kind, x: index * PITCH, count: nodes.length })),
    boxes,
    ribbons: ribbonsOf(graph.links, boxes, scale),
  };
};

const linesIn = ({ nodes }: NodeColumn): Box['lines'] => (nodes.length <= 24 ? 2 : nodes.length <= 120 ? 1 : 0);

/** The most of what came to a node, went from it, or is said of it, kg. */
const throughputOf = ({ nodes, links }: Pick<TraceGraph, 'nodes' | 'links'>): ReadonlyMap<string, number> => {
  const [into, out] = [new Map<string, number>(), new Map<string, number>()];
  for (const { from, to, kg } of links) {
    into.set(to, (into.get(to) ?? 0) + kg);
    out.set(from, (out.get(from) ?? 0) + kg);
  }
  return new Map(nodes.map(({ id, kg }) => [id, Math.max(kg ?? 0, into.get(id) ?? 0, out.get(id) ?? 0)]));
};

/** In the order of where their neighbours stand, on the mean by kilograms; who has none that stands keeps to the end. */
const byNeighbours = (
  nodes: readonly TraceNode[],
  links: TraceGraph['links'],
  boxes: ReadonlyMap<string, Box>,
  end: 'from' | 'to',
): readonly TraceNode[] => {
  const sums = new Map<string, { kg: number; moment: number }>();
  for (const link of links) {
    const box = boxes.get(end === 'to' ? link.from : link.to);
    const own = link[end];
    if (box === undefined) continue;
    const sum = sums.get(own) ?? { kg: 0, moment: 0 };
    sums.set(own, { kg: sum.kg + link.kg, moment: sum.moment + link.kg * (box.y + box.bar / 2) });
  }
  const middle = ({ id }: TraceNode): number => {
    const sum = sums.get(id);
    return sum === undefined || sum.kg === 0 ? Number.MAX_VALUE : sum.moment / sum.kg;
  };
  return [...nodes].sort((a, b) => middle(a) - middle(b));
};

/** Ribbons are stacked on each bar in the order of the other end, so that few cross. */
const ribbonsOf = (links: TraceGraph['links'], boxes: ReadonlyMap<string, Box>, scale: number): readonly Ribbon[] => {
  const yOf = (id: string): number => boxes.get(id)?.y ?? 0;
  const [left, right] = [new Map<string, number>(), new Map<string, number>()];
  const starts = stack(
    [...links].sort((a, b) => yOf(a.to) - yOf(b.to)),
    'from',
    right,
    scale,
  );
  const ends = stack(
    [...links].sort((a, b) => yOf(a.from) - yOf(b.from)),
    'to',
    left,
    scale,
  );
  return links.flatMap((link) => {
    const [a, b] = [boxes.get(link.from), boxes.get(link.to)];
    if (a === undefined || b === undefined) return [];
    const wide = link.kg * scale;
    const thin = wide < 1;
    const [y0, y1] = [a.y + (starts.get(link) ?? 0), b.y + (ends.get(link) ?? 0)];
    const draw = a.column === b.column ? loop : across;
    return [{ from: link.from, to: link.to, thin, d: draw(a, y0, b, y1, thin ? 0 : wide) }];
  });
};

type Link = TraceGraph['links'][number];

const stack = (
  links: readonly Link[],
  end: 'from' | 'to',
  filled: Map<string, number>,
  scale: number,
): ReadonlyMap<Link, number> =>
  new Map(
    links.map((link) => {
      const at = filled.get(link[end]) ?? 0;
      filled.set(link[end], at + link.kg * scale);
      return [link, at];
    }),
  );

const round = (value: number): number => Math.round(value * 10) / 10;
const path = (...parts: readonly (string | number)[]): string =>
  parts.map((part) => (typeof part === 'number' ? ` ${round(part)}` : part)).join('');

/** Edges of a ribbon as path data; of one without width, its middle. */
const edges = (
  x0: number,
  y0: number,
  turns: readonly [number, number],
  x1: number,
  y1: number,
  wide: number,
): string => {
  const [c0, c1] = turns;
  const there = path('M', x0, y0, 'C', c0, y0, c1, y1, x1, y1);
  if (wide === 0) return there;
  return there + path('V', y1 + wide, 'C', c1, y1 + wide, c0, y0 + wide, x0, y0 + wide, 'Z');
};

const across = (a: Box, y0: number, b: Box, y1: number, wide: number): string => {
  const middle = (a.x + BAR + b.x) / 2;
  return edges(a.x + BAR, y0, [middle, middle], b.x, y1, wide);
};

/** Between two of one column, such as the heel of a tank: to the left of both. */
const loop = (a: Box, y0: number, b: Box, y1: number, wide: number): string =>
  edges(a.x, y0, [a.x - 26, a.x - 26], b.x, y1, wide);
