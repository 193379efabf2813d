import type { UsedView } from '@hull-record/paper';
import { basisOf, weaknessOf } from '../platform/composition/basis.js';
import type { SupplierLot } from '../platform/lots/supplier-lots.js';
import type { UsedRow } from '../platform/views/making.js';
import type { MadeOf } from './load-made-of.js';
import type { RecordFacts } from './record-facts.js';
import { amount, count, decimal, stacked } from './word-values.js';

/** A supplier's lot that is less of a lot than this is not named but counted: 0.1 %, common practice here. */
const NAMED_FROM = 0.001;

/** What was used in a layer, joint or repair, in the order in which it was. */
export const wordUsed = (
  { used, madeOf }: Pick<RecordFacts, 'used' | 'madeOf'>,
  placeId: string,
): readonly UsedView[] =>
  used
    .filter((row) => row.into_id === placeId)
    .sort(inOrder)
    .map((row) => wordUse(row, madeOf.byLot.get(row.lot_id) ?? { supplierLots: [], weakness: 0 }));

const wordUse = (row: UsedRow, { supplierLots, weakness }: MadeOf): UsedView => ({
  lot: [row.lot, ...wayOf(row)].join(' '),
  lastDay: row.last_day,
  supplierLots: wordSupplierLots(supplierLots),
  material: row.material ?? mixOf(supplierLots),
  amount: stacked(amount(row)),
  basis: basisOf(Math.max(weaknessOf(row.basis), weakness)),
  corrected: row.id !== row.root,
});

/** By which way it came: out of a tank or container, through a gun. */
const wayOf = ({ tank, container, gun }: UsedRow): readonly string[] => [
  ...(tank === null ? [] : [`in tank ${tank}`]),
  ...(container === null ? [] : [`of ${container}`]),
  ...(gun === null ? [] : [`by ${gun}`]),
];

/** By the time it was used, then lot and amount; two of the same at the same time print the same. */
const inOrder = (a: UsedRow, b: UsedRow): number =>
  a.happened_at.getTime() - b.happened_at.getTime() ||
  byText(a.lot, b.lot) ||
  a.kg - b.kg ||
  byText(`${a.quantity} ${a.unit} ${a.basis}`, `${b.quantity} ${b.unit} ${b.basis}`) ||
  byText(a.root, b.root);

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The suppliers' lots by name with their part of the lot, the largest first; those too small to name as a number of lots. */
export const wordSupplierLots = (lots: readonly SupplierLot[]): readonly string[] => {
  const mixed = new Set(lots.map(({ material }) => material)).size > 1;
  const named = lots.filter(({ fraction }) => fraction >= NAMED_FROM);
  const rest = lots.filter(({ fraction }) => fraction < NAMED_FROM);
  const restFraction = rest.reduce((sum, { fraction }) => sum + fraction, 0);
  return [
    ...named.map(({ supplierLot, material, fraction }) =>
      [...(mixed && material !== '' ? [material] : []), `${supplierLot} (${percent(fraction)})`].join(', '),
    ),
    ...(rest.length === 0 ? [] : [`${count(rest.length, 'earlier lot')} (${percent(restFraction)})`]),
  ];
};

/** To a tenth of a percent; what is not all is not called all. */
export const percent = (fraction: number): string => {
  if (fraction < 0.0005) return 'under 0.1 %';
  const text = decimal(fraction * 100, 1);
  return text === '100' && fraction < 1 - 1e-9 ? 'over 99.9 %' : `${text} %`;
};

const mixOf = (lots: readonly SupplierLot[]): string => {
  const materials = [...new Set(lots.map(({ material }) => material))].filter((name) => name !== '');
  if (materials.length === 0) return 'not named';
  return materials.length === 1 ? (materials[0] ?? '') : `mix of ${materials.join(' + ')}`;
};
