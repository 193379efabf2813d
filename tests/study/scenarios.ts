/** What is wrong with the plants of a scenario. Shares and shapes are inventions, chosen so that a lot is neither obvious nor lost. */
export interface Scenario {
  readonly name: string;
  /** Whether any lot is bad; where none is, any that stands out is a false alarm. */
  readonly badLots: number;
  /** Least and most of all expected claims that a bad lot, or the bad mold, leads to beyond the background. */
  readonly carries: readonly [number, number];
  /** Whether the bad lot goes through the tank: hulls of later fills have small shares of it. */
  readonly throughTank?: boolean;
  readonly badMold?: boolean;
  /** Share of scans that name another lot of the family. */
  readonly wrongScans?: number;
  /** Share of the hulls of an innocent lot in which the inspection of a hold finds something. */
  readonly prompted?: number;
  /** Claims rise steeply with age and the youngest hulls have just been sold; the bad lot is in none of the oldest. */
  readonly steepAges?: boolean;
  /** Compared with the crude ranking: not to be inferior, or to be better. */
  readonly compared?: 'not inferior' | 'better';
}

export const SCENARIOS: readonly Scenario[] = [
  { name: 'no bad lot', badLots: 0, carries: [0, 0] },
  { name: 'no bad lot, age mixes with lots', badLots: 0, carries: [0, 0], steepAges: true },
  { name: 'no bad lot, a bad mold', badLots: 0, carries: [0.3, 0.6], badMold: true },
  { name: 'one bad lot', badLots: 1, carries: [0.15, 0.4], compared: 'not inferior' },
  { name: 'two bad lots', badLots: 2, carries: [0.12, 0.3], compared: 'not inferior' },
  { name: 'one, 5 % of scans wrong', badLots: 1, carries: [0.15, 0.4], wrongScans: 0.05, compared: 'not inferior' },
  { name: 'one, and prompted claims', badLots: 1, carries: [0.15, 0.4], prompted: 0.3, compared: 'not inferior' },
  { name: 'one, through the tank', badLots: 1, carries: [0.15, 0.4], throughTank: true, compared: 'not inferior' },
  { name: 'one, age mixes with lots', badLots: 1, carries: [0.15, 0.4], steepAges: true, compared: 'better' },
];
