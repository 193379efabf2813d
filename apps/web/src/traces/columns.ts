import type { TraceGraph, TraceNode } from '@hull-record/contracts';

/** What stands in a column of the picture, from left to right. */
export type ColumnKind = 'received' | 'tank' | 'made' | 'hulls';

/** A column with its nodes in the order of the answer. */
export interface NodeColumn {
  readonly kind: ColumnKind;
  readonly nodes: readonly TraceNode[];
}

/** Mixtures of mixtures stand in columns of their own, at most so many; what is deeper stands in the last of them. */
const DEPTHS = 3;

const kindOf = ({ kind, origin }: TraceNode): ColumnKind => {
  if (kind !== 'lot') return 'hulls';
  if (origin === 'tank') return 'tank';
  return origin === 'mixed' || origin === 'cut' ? 'made' : 'received';
};

/** Received lots, tanks, mixtures and kits by how deep they are mixed, hulls; a column without nodes is left out. */
export const columnsOf = ({ nodes, links }: Pick<TraceGraph, 'nodes' | 'links'>): readonly NodeColumn[] => {
  const of = (kind: ColumnKind): readonly TraceNode[] => nodes.filter((node) => kindOf(node) === kind);
  const made = of('made');
  const depths = depthsOf(made, links);
  const byDepth = Array.from({ length: DEPTHS }, (_, depth) => made.filter(({ id }) => depths.get(id) === depth));
  const columns: readonly NodeColumn[] = [
    { kind: 'received', nodes: of('received') },
    { kind: 'tank', nodes: [...of('tank')].sort((a, b) => ((a.at ?? '') < (b.at ?? '') ? -1 : 1)) },
    ...byDepth.map((some) => ({ kind: 'made' as const, nodes: some })),
    { kind: 'hulls', nodes: of('hulls') },
  ];
  return columns.filter((column) => column.nodes.length > 0);
};

/** How many mixtures or kits stand before each on its longest way, as far as there are columns. */
const depthsOf = (made: readonly TraceNode[], links: TraceGraph['links']): ReadonlyMap<string, number> => {
  const depths = new Map(made.map(({ id }) => [id, 0]));
  const among = links.filter(({ from, to }) => depths.has(from) && depths.has(to));
  for (let round = 1; round < DEPTHS; round += 1)
    for (const { from, to } of among)
      depths.set(to, Math.min(DEPTHS - 1, Math.max(depths.get(to) ?? 0, (depths.get(from) ?? 0) + 1)));
  return depths;
};
