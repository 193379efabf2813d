import { benjaminiHochberg } from '../many/adjust.js';
import type { SuspectClass } from './classes.js';
import { tailChances } from './exact-tail.js';
import type { RiskCells } from './risk-cells.js';
import { roomOf, tally } from './tally.js';

/** A class with its stratified exact log-rank test. */
export interface Screened {
  readonly suspect: SuspectClass;
  readonly observed: number;
  readonly expected: number;
  readonly variance: number;
  /** One-sided: the observed number of claims or more. */
  readonly p: number;
  /**
   * The smallest p that the test could give, with a claim on as many exposed hulls as can have one (Tarone's p*); for a class
   * that could have very many, a bound of it that is far below any line.
   */
  readonly smallestP: number;
}

/** A class that can be judged, with its p corrected for all that were judged (Benjamini-Hochberg, all families). */
export interface Ranked extends Screened {
  readonly q: number;
}

/** Classes that were judged, the least p first, and those about which these hulls can say nothing. */
export interface Screening {
  readonly ranked: readonly Ranked[];
  /** Without contrast, or with a smallest attainable p above the limit: named apart and not among the tests. */
  readonly untestable: readonly Screened[];
}

/** Tests every class, sets those apart that cannot be judged, and ranks the others. */
export const screenClasses = (suspects: readonly SuspectClass[], cells: RiskCells, limit: number): Screening => {
  const room = roomOf(cells);
  const screened = suspects.map((suspect): Screened => {
    const { exposed, observed, expected, most, variance } = tally(suspect.hulls, cells, room);
    const far = Math.min(most, Math.ceil(expected + 6 * Math.sqrt(expected) + 8));
    const tails = tailChances(exposed, cells, Math.max(observed, far));
    const [p, smallestP] = [tails[observed] as number, tails[Math.max(observed, far)] as number];
    return { suspect, observed, expected, variance, p, smallestP };
  });
  // A class in every hull at risk, or in none, is certain to have the claims it has: its smallest p is 1.
  const can = ({ smallestP }: Screened): boolean => smallestP <= limit;
  const testable = byChance(screened.filter(can));
  const qs = benjaminiHochberg(testable.map(({ p }) => p));
  return {
    ranked: testable.map((each, i) => ({ ...each, q: qs[i] as number })),
    untestable: screened.filter((each) => !can(each)),
  };
};

/** The least p first. Ties are put in an order that does not hang on the order of the input. */
const byChance = (screened: readonly Screened[]): readonly Screened[] => {
  const names = new Map<Screened, string>();
  const named = (each: Screened): string => {
    const name = names.get(each) ?? nameOf(each);
    names.set(each, name);
    return name;
  };
  const byName = (a: Screened, b: Screened): number => (named(a) < named(b) ? -1 : named(a) > named(b) ? 1 : 0);
  return [...screened].sort((a, b) => a.p - b.p || b.observed / b.expected - a.observed / a.expected || byName(a, b));
};

const nameOf = ({ suspect }: Screened): string =>
  suspect.members
    .map(({ family, lot, fromShare }) => `${family} ${lot} ${fromShare}`)
    .sort()
    .join();
