import type { TraceGraph } from '@hull-record/contracts';
import type { Picture } from './layout.js';

/** What is picked of a trace: which nodes and ways stay while the rest fades. */
export interface Pick {
  readonly id: string;
  readonly has: (node: string) => boolean;
  readonly hasWay: (from: string, to: string) => boolean;
}

/** A node with all that leads to it and all that it leads to, not what else its neighbours do. */
export const pickOf = (id: string, links: TraceGraph['links']): Pick => {
  const [before, after] = [reached(id, links, 'to', 'from'), reached(id, links, 'from', 'to')];
  return {
    id,
    has: (node) => before.has(node) || after.has(node),
    hasWay: (from, to) => (before.has(from) && before.has(to)) || (after.has(from) && after.has(to)),
  };
};

const reached = (
  id: string,
  links: TraceGraph['links'],
  near: 'from' | 'to',
  far: 'from' | 'to',
): ReadonlySet<string> => {
  const next = new Map<string, string[]>();
  for (const link of links) {
    const found = next.get(link[near]);
    if (found) found.push(link[far]);
    else next.set(link[near], [link[far]]);
  }
  const all = new Set([id]);
  for (const each of all) for (const other of next.get(each) ?? []) all.add(other);
  return all;
};

/** The node under a point of the picture. */
export const nodeAt = ({ boxes }: Picture, x: number, y: number): string | undefined =>
  [...boxes.values()].find(
    (box) => x >= box.x - 6 && x <= box.x + 160 && y >= box.y - 2 && y <= box.y + Math.max(box.row, 8),
  )?.node.id;

/**
 * The node that an arrow key leads to: up and down within a column, left and right along a way, to the nearest; where no
 * way goes on, to the nearest of the next column.
 */
export const nodeBeside = ({ boxes, ribbons }: Picture, from: string | undefined, key: string): string | undefined => {
  const all = [...boxes.values()].sort((a, b) => a.column - b.column || a.y - b.y);
  const here = from === undefined ? undefined : boxes.get(from);
  if (here === undefined) return all[0]?.node.id;
  if (key === 'ArrowUp' || key === 'ArrowDown') {
    const own = all.filter(({ column }) => column === here.column);
    const at = own.indexOf(here) + (key === 'ArrowDown' ? 1 : -1);
    return own[at]?.node.id ?? from;
  }
  const goesOn = key === 'ArrowRight';
  const linked = new Set(
    ribbons.flatMap((way) => {
      const [near, far] = goesOn ? [way.from, way.to] : [way.to, way.from];
      return near === from ? [far] : [];
    }),
  );
  const along = all.filter(({ node, column }) => linked.has(node.id) && column !== here.column);
  const next = along.length > 0 ? along : all.filter(({ column }) => column === here.column + (goesOn ? 1 : -1));
  return next.sort((a, b) => Math.abs(a.y - here.y) - Math.abs(b.y - here.y))[0]?.node.id ?? from;
};
