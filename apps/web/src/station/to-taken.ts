import { isUnit } from '@hull-record/trade';
import type { PostBody } from '../api/contract.js';
import type { Line } from '../day/propose.js';
import { unidentifiedOf } from '../day/unnamed.js';

type Taken = NonNullable<PostBody<'/api/layers'>['used']>[number];

/** A line as it is recorded; nothing without a source or an amount. Nobody weighs what goes on a layer. */
export const toTaken = ({ source, quantity, unit }: Line): Taken[] => {
  if (source === null || !(Number(quantity) > 0) || !isUnit(unit)) return [];
  const amount = { quantity, unit, basis: 'as scheduled' as const };
  if (source.unnamed !== undefined) {
    const unidentified = unidentifiedOf(source.unnamed);
    return unidentified === null ? [] : [{ unidentified, amount }];
  }
  if (source.kind === 'gun') return [{ gun: source.code, amount }];
  return [source.kind === 'tank' ? { tank: source.code, amount } : { lot: source.code, amount }];
};
