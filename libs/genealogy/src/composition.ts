/**
 * Least fraction of a lot's mass at which a source is kept by name: 1e-9.
 *
 * Common practice here, not a published value: a tank's heels shrink a source by a factor of 3 to 10 with every fill and
 * never to nothing, so a chain of fills needs an end. Below it a trace answers membership only.
 */
export const FLOOR = 1e-9;

/** What one source is of a lot's mass. */
export interface Portion {
  /** The received lot; null for the remainder: all sources of this role that were below the floor. */
  readonly source: string | null;
  /** Material role of the source, such as resin or catalyst. */
  readonly role: string;
  /** kg of the source per kg of the lot, above 0 and at most 1. */
  readonly fraction: number;
  /** How weakly its amount is known on the weakest way to it: 0 is strongest, and what is meant when left out. */
  readonly weakness?: number;
}

/** What a lot is made of: fractions that sum to 1, sorted by role, then by source, each role's remainder last. */
export type Composition = readonly Portion[];

/** The composition of a received lot: all of it is itself. */
export const receivedComposition = (source: string, role: string): Composition => [{ source, role, fraction: 1 }];

/** Order of two texts by code unit, the same on every machine and in every language. */
export const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Order of two portions: by role, then by source, the remainder after every source. */
export const byRoleThenSource = (a: Portion, b: Portion): number => {
  if (a.role !== b.role) return byCodeUnit(a.role, b.role);
  if (a.source === null || b.source === null) return Number(a.source === null) - Number(b.source === null);
  return byCodeUnit(a.source, b.source);
};
