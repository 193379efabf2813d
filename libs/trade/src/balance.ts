import { weakestBasis, type Basis } from './basis.js';

/** Something that happened to the kilograms of a lot, in any order. */
export type BalanceEvent =
  | {
      readonly kind: 'used' | 'put into' | 'lost';
      readonly at: number;
      readonly kg: number;
      readonly basis: Basis;
      readonly what: string;
    }
  | { readonly kind: 'counted'; readonly at: number; readonly kg: number; readonly what: string };

/** A line of a balance: what it changed (negative is out), and what is left by the book after it. All kg. */
export interface BalanceLine {
  readonly kind: BalanceEvent['kind'];
  readonly at: number;
  readonly what: string;
  readonly changeKg: number;
  readonly leftKg: number;
  /** How the kilograms are known; null for a count, which says what was there. */
  readonly basis: Basis | null;
}

export type BalanceVerdict = 'balances' | 'lost more than allowed' | 'more than was received' | 'overdrawn: count it';

/** An account of every kilogram of a lot. */
export interface Balance {
  readonly receivedKg: number;
  readonly usedKg: number;
  readonly putIntoKg: number;
  readonly lostKg: number;
  /** What counts found more (gain) or less (negative) than the book. */
  readonly differenceKg: number;
  readonly leftKg: number;
  readonly basis: Basis;
  readonly lines: readonly BalanceLine[];
  readonly verdict: BalanceVerdict;
}

/** Kilograms under which sums of doubles are taken for equal: a milligram. */
const SAME_KG = 1e-6;

const outLast = (a: BalanceEvent, b: BalanceEvent): number =>
  a.at - b.at || Number(a.kind === 'counted') - Number(b.kind === 'counted');

/**
 * Accounts for every kilogram of a lot: received = used + put into other lots + lost + left - difference of counts.
 *
 * A count says what is left from then on; at one instant, what was drawn goes before what was counted. Unexplained
 * loss is judged against the allowance, a fraction of what was received; without one, only an overdraw is said.
 */
export const balanceOf = (
  received: { readonly kg: number; readonly basis: Basis },
  events: readonly BalanceEvent[],
  lossAllowance: number | null,
): Balance => {
  let leftKg = received.kg;
  const lines = [...events].sort(outLast).map((event): BalanceLine => {
    const changeKg = event.kind === 'counted' ? event.kg - leftKg : -event.kg;
    leftKg += changeKg;
    const basis = event.kind === 'counted' ? null : event.basis;
    return { kind: event.kind, at: event.at, what: event.what, changeKg, leftKg, basis };
  });
  const sum = (kind: BalanceEvent['kind']): number =>
    lines.filter((line) => line.kind === kind).reduce((total, line) => total + line.changeKg, 0);
  const differenceKg = sum('counted');
  return {
    receivedKg: received.kg,
    ...{ usedKg: 0 - sum('used'), putIntoKg: 0 - sum('put into'), lostKg: 0 - sum('lost'), differenceKg, leftKg },
    basis: weakestBasis([
      received.basis,
      ...events.flatMap((event) => (event.kind === 'counted' ? [] : [event.basis])),
    ]),
    lines,
    verdict: verdictOf(received.kg, leftKg, differenceKg, lossAllowance),
  };
};

/** Judges a balance by its sums; the same for a list of lots that was summed elsewhere. All kg. */
export const verdictOf = (
  receivedKg: number,
  leftKg: number,
  differenceKg: number,
  lossAllowance: number | null,
): BalanceVerdict => {
  if (leftKg < -SAME_KG) return 'overdrawn: count it';
  if (lossAllowance === null) return 'balances';
  if (-differenceKg > receivedKg * lossAllowance + SAME_KG) return 'lost more than allowed';
  return differenceKg > receivedKg * lossAllowance + SAME_KG ? 'more than was received' : 'balances';
};
