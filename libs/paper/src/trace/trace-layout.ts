import type { TraceColumn, TraceNodeView, TraceView } from './trace-view.js';

/** A node where it is drawn, points from the drawing's upper left corner. */
export interface TraceBox extends TraceNodeView {
  readonly x: number;
  readonly y: number;
  readonly bar: number;
}

/** Kilograms on their way, as wide as they are many; both ends are upper edges. */
export interface TraceRibbon {
  readonly from: { readonly x: number; readonly y: number };
  readonly to: { readonly x: number; readonly y: number };
  readonly width: number;
}

/** The drawing of a trace. */
export interface TraceLayout {
  readonly height: number;
  /** Room for the words of a node, points. */
  readonly words: number;
  readonly columns: readonly { readonly title: string; readonly x: number }[];
  readonly boxes: readonly TraceBox[];
  readonly ribbons: readonly TraceRibbon[];
}

export const BAR = 8;
const TOP = 26;
/** Room of a node beside its bar: two lines of words. */
const ROOM = 22;
const BARS = 160;
/** More of a column are drawn as one. */
const MOST = 16;
const LAST = 96;

type Links = TraceView['links'];

/** Lays a trace out in a width: bars and ribbons on one scale; what does not fit in a column is drawn as one node. */
export const layOutTrace = (view: Pick<TraceView, 'columns' | 'links'>, width: number): TraceLayout => {
  const { columns, links } = folded(view);
  const pitch = columns.length < 2 ? 0 : (width - LAST) / (columns.length - 1);
  const flow = flowOf(links);
  const kgOf = ({ id, kg }: TraceNodeView): number => Math.max(kg ?? 0, flow.get(id) ?? 0);
  const most = Math.max(0, ...columns.map(({ nodes }) => nodes.reduce((sum, node) => sum + kgOf(node), 0)));
  const scale = most === 0 ? 0 : BARS / most;
  const boxes = columns.flatMap(({ nodes }, i) => {
    let y = TOP;
    return nodes.map((node): TraceBox => {
      const bar = Math.max(1, kgOf(node) * scale);
      const box = { ...node, x: i * pitch, y, bar };
      y += Math.max(ROOM, bar + 6);
      return box;
    });
  });
  return {
    height: Math.max(TOP, ...boxes.map(({ y, bar }) => y + Math.max(ROOM, bar))) + 4,
    words: (columns.length < 2 ? width : Math.min(LAST, pitch - 12)) - BAR - 4,
    columns: columns.map(({ title }, i) => ({ title, x: i * pitch })),
    boxes,
    ribbons: ribbonsOf(links, boxes, scale),
  };
};

/** The most of what came to a node and what went from it, kg. */
const flowOf = (links: Links): ReadonlyMap<string, number> => {
  const [into, out] = [new Map<string, number>(), new Map<string, number>()];
  for (const { from, to, kg } of links) {
    out.set(from, (out.get(from) ?? 0) + kg);
    into.set(to, (into.get(to) ?? 0) + kg);
  }
  return new Map(
    [...new Set([...into.keys(), ...out.keys()])].map((id) => [id, Math.max(into.get(id) ?? 0, out.get(id) ?? 0)]),
  );
};

const folded = ({
  columns,
  links,
}: Pick<TraceView, 'columns' | 'links'>): { columns: readonly TraceColumn[]; links: Links } => {
  const instead = new Map<string, string>();
  const kept = columns.map(({ title, nodes }, i) => {
    if (nodes.length <= MOST) return { title, nodes };
    const rest = nodes.slice(MOST - 1);
    for (const { id } of rest) instead.set(id, `rest ${i}`);
    const kg = rest.reduce((sum, node) => sum + (node.kg ?? 0), 0);
    return { title, nodes: [...nodes.slice(0, MOST - 1), { id: `rest ${i}`, code: `and ${rest.length} more`, kg }] };
  });
  const ways = new Map<string, Links[number]>();
  for (const { from, to, kg } of links) {
    const way = { from: instead.get(from) ?? from, to: instead.get(to) ?? to };
    const key = `${way.from} ${way.to}`;
    if (way.from !== way.to) ways.set(key, { ...way, kg: kg + (ways.get(key)?.kg ?? 0) });
  }
  return { columns: kept, links: [...ways.values()] };
};

/** Ribbons are stacked on each bar in the order of the other end, so that few cross. */
const ribbonsOf = (links: Links, boxes: readonly TraceBox[], scale: number): readonly TraceRibbon[] => {
  const at = new Map(boxes.map((box) => [box.id, box]));
  const drawn = links.flatMap((link) => {
    const [from, to] = [at.get(link.from), at.get(link.to)];
    return from === undefined || to === undefined ? [] : [{ from, to, width: link.kg * scale }];
  });
  const starts = stacked(drawn, 'from', 'to');
  const ends = stacked(drawn, 'to', 'from');
  return drawn.map((way, i) => ({
    from: { x: way.from.x + BAR, y: way.from.y + (starts[i] ?? 0) },
    to: { x: way.to.x, y: way.to.y + (ends[i] ?? 0) },
    width: way.width,
  }));
};

type Way = { readonly from: TraceBox; readonly to: TraceBox; readonly width: number };

const stacked = (ways: readonly Way[], end: 'from' | 'to', other: 'from' | 'to'): readonly number[] => {
  const filled = new Map<string, number>();
  const places = new Array<number>(ways.length).fill(0);
  const order = ways.map((_, i) => i).sort((a, b) => (ways[a]?.[other].y ?? 0) - (ways[b]?.[other].y ?? 0));
  for (const i of order) {
    const way = ways[i];
    if (way === undefined) continue;
    places[i] = filled.get(way[end].id) ?? 0;
    filled.set(way[end].id, (places[i] ?? 0) + way.width);
  }
  return places;
};
