import type { TraceColumn, TraceRowView, TraceView } from '@hull-record/paper';
import type { TraceGraph, TraceNode } from '@hull-record/contracts';
import { wordPaper } from '../../platform/papers/word-paper.js';
import type { PlantRow } from '../../platform/papers/plant-of.js';

/** Columns from left to right; a tank is filled again and again, so its fills stand by time. */
const COLUMNS: readonly (readonly [title: string, has: (node: TraceNode) => boolean])[] = [
  ['received lots', ({ kind, origin }) => kind === 'lot' && (origin === 'received' || origin === 'unidentified')],
  ['tank fills', ({ kind, origin }) => kind === 'lot' && origin === 'tank'],
  ['mixtures, kits', ({ kind, origin }) => kind === 'lot' && (origin === 'mixed' || origin === 'cut')],
  ['hulls and parts', ({ kind }) => kind !== 'lot'],
];

/** Words a trace for paper. */
export const wordTrace = (graph: TraceGraph, plant: PlantRow, newest: Date): TraceView => {
  const { paper, time } = wordPaper(plant, newest, graph.recomputing);
  const own = graph.of === 'lot' ? ofLot(graph, (at) => time.at(at)) : ofHulls(graph);
  return {
    ...{ ...paper, ...own, of: graph.of, leftOut: leftOutOf(graph) },
    columns: columnsOf(graph),
    ...{ links: graph.links, assumes: graph.assumes },
  };
};

type Own = Pick<TraceView, 'code' | 'identity' | 'says' | 'rows'>;

const ofLot = (graph: TraceGraph, time: (at: Date) => string): Own => {
  const [lot] = graph.nodes;
  return {
    code: graph.codes[0] ?? '',
    identity: [
      ['Material', lot?.material ?? lot?.role ?? null],
      ['Supplier', lot?.supplier ?? null],
      ['Supplier’s lot', lot?.supplierLot ?? null],
      ['Amount', lot === undefined || lot.kg === null ? null : `${kilograms(lot.kg)} kg`],
      ['State', lot?.state ?? null],
      ['Recorded', lot === undefined || lot.at === null ? null : time(new Date(lot.at))],
    ],
    says: sentenceOf(graph),
    rows: graph.nodes.slice(1).map(wordRow),
  };
};

const ofHulls = ({ nodes, codes }: TraceGraph): Own => {
  const hulls = nodes.filter(({ kind }) => kind === 'hull');
  const lots = nodes.filter(({ kind }) => kind === 'lot');
  const kg = hulls.reduce((sum, node) => sum + (node.kg ?? 0), 0);
  const received = lots.filter(({ origin }) => origin === 'received').length;
  const unidentified = lots.filter(({ origin }) => origin === 'unidentified').length;
  return {
    code: codes.join(', '),
    identity: hulls.map(({ code, hin, now }) => [
      hulls.length === 1 ? 'HIN and where it is' : code,
      [hin, whereOf(now)].filter(Boolean).join(', ') || null,
    ]),
    says:
      `In ${codes.join(', ')} there are ${kilograms(kg)} kg of material, of ${received} received ${received === 1 ? 'lot' : 'lots'}.` +
      (unidentified === 0 ? '' : ` Of ${unidentified} it is not known which they are.`),
    rows: lots.map(wordRow),
  };
};

const leftOutOf = ({ leftOut }: TraceGraph): string | null =>
  leftOut === null
    ? null
    : `There is more than is printed: ${leftOut.lots} lots and ${leftOut.hulls} hulls or parts with less are left out.`;

const columnsOf = ({ nodes }: TraceGraph): readonly TraceColumn[] =>
  COLUMNS.map(([title, has]) => ({
    title,
    nodes: nodes.filter(has).map(({ id, code, kg }) => ({ id, code, kg })),
  })).filter(({ nodes: own }) => own.length > 0);

const sentenceOf = ({ nodes, codes }: TraceGraph): string => {
  const count = (some: (node: TraceNode) => boolean): number => nodes.filter(some).length;
  const possibly = count((node) => node.possibly);
  const parts = count(({ kind, possibly: may }) => kind === 'part' && !may);
  const hulls = count(({ kind, possibly: may }) => kind === 'hull' && !may);
  const inNone = parts === 0 ? '' : ` and ${parts} ${parts === 1 ? 'part that is' : 'parts that are'} in none`;
  const may = possibly === 0 ? '' : ` ${possibly} more may hold it: unidentified material was used there.`;
  return `Lot ${codes[0] ?? ''} is in ${hulls} ${hulls === 1 ? 'hull' : 'hulls'}${inNone}.${may}`;
};

const wordRow = (node: TraceNode): TraceRowView => ({
  code: node.code,
  what:
    node.kind === 'lot'
      ? [ORIGINS[node.origin ?? ''] ?? node.origin, node.material].filter(Boolean).join(', ')
      : whatOf(node),
  kg: node.kg === null ? (node.possibly ? 'possibly' : 'trace') : `${kilograms(node.kg)} kg`,
  share: node.share === null ? 'not told' : percent(node.share),
  basis: node.basis ?? '',
  now: node.now === null ? (node.state ?? '') : whereOf(node.now),
});

const whereOf = (now: TraceNode['now']): string =>
  now === null ? '' : [now.what, now.dealer].filter(Boolean).join(', ');

const ORIGINS: Readonly<Record<string, string>> = {
  ...{ received: 'received', mixed: 'mixture', tank: 'tank fill', cut: 'kit', unidentified: 'unidentified' },
};

const whatOf = ({ kind, hin }: TraceNode): string => (hin === null ? kind : `${kind}, ${hin}`);

const kilograms = (kg: number): string => (kg < 0.001 ? 'under 0.001' : String(Number(kg.toFixed(3))));

const percent = (share: number): string =>
  share < 0.00001 ? 'under 0.001 %' : `${Number((100 * share).toPrecision(share < 0.001 ? 2 : 3))} %`;
