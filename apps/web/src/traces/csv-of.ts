import type { TraceGraph } from '@hull-record/contracts';

type Row = readonly (string | number | null)[];

/** The columns of the file, by one name in every language: programs read it. */
const HEAD: Row = [
  ...['kind', 'code', 'origin', 'material', 'role', 'supplier', 'supplierLot', 'state', 'hin', 'kg', 'share', 'basis'],
  ...['possibly', 'now', 'dealer', 'since'],
];

/** A trace as rows of a file: every lot, hull and part of it, then every way with its kilograms. */
export const csvOf = ({ nodes, links, leftOut }: TraceGraph): readonly Row[] => {
  const codes = new Map(nodes.map(({ id, code }) => [id, code]));
  return [
    HEAD,
    ...nodes.map((node): Row => [
      ...[node.kind, node.code, node.origin, node.material, node.role, node.supplier, node.supplierLot, node.state],
      ...[node.hin, node.kg, node.share, node.basis, node.possibly ? 'possibly' : ''],
      ...[node.now?.what ?? null, node.now?.dealer ?? null, node.now?.since ?? null],
    ]),
    ...(leftOut === null ? [] : [[`left out: ${leftOut.lots} lots, ${leftOut.hulls} hulls and parts with less`]]),
    [],
    ['from', 'into', 'kg'],
    ...links.map(({ from, to, kg }): Row => [codes.get(from) ?? from, codes.get(to) ?? to, kg]),
  ];
};
