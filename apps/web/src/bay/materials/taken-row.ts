import type { PostBody } from '../../api/contract.js';
import { typedDecimal } from '../../words/typed-number.js';

type Taken = NonNullable<PostBody<'/api/parts/:part/repairs'>['used']>[number];
export type TakenUnit = Taken['amount']['unit'];
export type TakenBasis = Taken['amount']['basis'];

/** What was taken, as scanned and typed. */
export interface TakenRow {
  /** Code of a lot, or the path of a label on a lot, container or gun. */
  readonly code: string;
  readonly quantity: string;
  readonly unit: TakenUnit;
  readonly basis: TakenBasis;
}

/** Nobody weighs what goes onto a patch but for its mix; what is scheduled is what is mostly known. */
export const NOTHING_TAKEN: TakenRow = { code: '', quantity: '', unit: 'kg', basis: 'weighed' };

const LABEL = /\/l\/(lot|container)\/([^/?#\s]+)/;

/** What a row says was taken; null while it lacks the code or a quantity above zero. */
export const takenOf = ({ code, quantity, unit, basis }: TakenRow): Taken | null => {
  const amount = typedDecimal(quantity);
  if (code.trim() === '' || amount === undefined || !(Number(amount) > 0)) return null;
  const [, of, encoded = ''] = LABEL.exec(code) ?? [];
  const what = of === undefined ? code.trim() : decodeURIComponent(encoded);
  const taken = { quantity: amount, unit, basis };
  return of === 'container' ? { container: what, amount: taken } : { lot: what, amount: taken };
};
