import type { PostBody } from '../../api/contract.js';
import { typedDecimal } from '../../words/typed-number.js';

type Taken = NonNullable<PostBody<'/api/parts/:part/repairs'>['used']>[number];
export type TakenUnit = Taken['amount']['unit'];
export type TakenBasis = Taken['amount']['basis'];
export type TakenRole = NonNullable<Taken['unidentified']>['role'];

/** Where material was taken from: a lot or container when nothing else is said. */
export const TAKEN_FROM = ['lot', 'tank', 'gun', 'unidentified'] as const;
export type TakenFrom = (typeof TAKEN_FROM)[number];

/** What was taken, as scanned and typed. */
export interface TakenRow {
  readonly from: TakenFrom;
  /** Code of a lot, tank or gun, or the path of a label on one; of what nobody can name, the lots that it may be of. */
  readonly code: string;
  readonly quantity: string;
  readonly unit: TakenUnit;
  readonly basis: TakenBasis;
  /** Of what nobody can name: what it was taken for, what it looked like, and where it stood. */
  readonly role: TakenRole;
  readonly looks: string;
  readonly foundAt: string;
}

/** Nobody weighs what goes onto a patch but for its mix; what is scheduled is what is mostly known. */
export const NOTHING_TAKEN: TakenRow = {
  ...{ from: 'lot', code: '', quantity: '', unit: 'kg', basis: 'weighed' },
  ...{ role: 'resin', looks: '', foundAt: '' },
};

const LABEL = /\/l\/(lot|container|equipment)\/([^/?#\s]+)/;

/** What a row says was taken; null while it lacks what names it, or a quantity above zero. */
export const takenOf = (row: TakenRow): Taken | null => {
  const quantity = typedDecimal(row.quantity);
  const named = sourceOf(row);
  if (named === null || quantity === undefined || !(Number(quantity) > 0)) return null;
  return { ...named, amount: { quantity, unit: row.unit, basis: row.basis } };
};

const sourceOf = ({ from, code, role, looks, foundAt }: TakenRow): Omit<Taken, 'amount'> | null => {
  if (from === 'unidentified') {
    if (looks.trim() === '') return null;
    const place = foundAt.trim() === '' ? {} : { foundAt: foundAt.trim() };
    return { unidentified: { role, looks: looks.trim(), ...place, likely: codesIn(code) } };
  }
  if (code.trim() === '') return null;
  const [, of, encoded = ''] = LABEL.exec(code) ?? [];
  const what = of === undefined ? code.trim() : decodeURIComponent(encoded);
  if (from === 'tank') return { tank: what };
  if (from === 'gun' || of === 'equipment') return { gun: what };
  return of === 'container' ? { container: what } : { lot: what };
};

const codesIn = (typed: string): string[] => [...new Set(typed.split(/[\s,;]+/).filter((code) => code !== ''))];
