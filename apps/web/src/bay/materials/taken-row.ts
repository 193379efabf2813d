import type { PostBody } from '../../api/contract.js';
import { unidentifiedOf, unnamedFor, type Unnamed } from '../../day/unnamed.js';
import { typedDecimal } from '../../words/typed-number.js';

type Taken = NonNullable<PostBody<'/api/parts/:part/repairs'>['used']>[number];
export type TakenUnit = Taken['amount']['unit'];
export type TakenBasis = Taken['amount']['basis'];

/** Where material was taken from: a lot or container when nothing else is said. */
export const TAKEN_FROM = ['lot', 'tank', 'gun', 'unidentified'] as const;
export type TakenFrom = (typeof TAKEN_FROM)[number];

/** What was taken, as scanned and typed. */
export interface TakenRow {
  readonly from: TakenFrom;
  /** Code of a lot, tank or gun, or the path of a label on one. */
  readonly code: string;
  readonly quantity: string;
  readonly unit: TakenUnit;
  readonly basis: TakenBasis;
  /** What is known of it where nobody can name it. */
  readonly unnamed: Unnamed;
}

/** Nobody weighs what goes onto a patch but for its mix; what is scheduled is what is mostly known. */
export const NOTHING_TAKEN: TakenRow = {
  ...{ from: 'lot', code: '', quantity: '', unit: 'kg', basis: 'weighed' },
  unnamed: unnamedFor('resin'),
};

const LABEL = /\/l\/(lot|container|equipment)\/([^/?#\s]+)/;

/** What a row says was taken; null while it lacks what names it, or a quantity above zero. */
export const takenOf = (row: TakenRow): Taken | null => {
  const quantity = typedDecimal(row.quantity);
  const named = sourceOf(row);
  if (named === null || quantity === undefined || !(Number(quantity) > 0)) return null;
  return { ...named, amount: { quantity, unit: row.unit, basis: row.basis } };
};

const sourceOf = ({ from, code, unnamed }: TakenRow): Omit<Taken, 'amount'> | null => {
  if (from === 'unidentified') {
    const unidentified = unidentifiedOf(unnamed);
    return unidentified && { unidentified };
  }
  if (code.trim() === '') return null;
  const [, of, encoded = ''] = LABEL.exec(code) ?? [];
  const what = of === undefined ? code.trim() : decodeURIComponent(encoded);
  if (from === 'tank') return { tank: what };
  if (from === 'gun' || of === 'equipment') return { gun: what };
  return of === 'container' ? { container: what } : { lot: what };
};
