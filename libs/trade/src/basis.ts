/**
 * How amounts are known, from the strongest to the weakest.
 *
 * Apportioned: a tank or drum drop spread over the parts sprayed. As scheduled: nobody measured, the schedule was taken.
 */
export const BASES = ['weighed', 'metered', 'apportioned', 'as scheduled'] as const;

/** How an amount is known. */
export type Basis = (typeof BASES)[number];

/**
 * The weakest basis on a path: the one a figure made of several amounts is printed with.
 *
 * Of no amounts at all it is "as scheduled", the basis that claims least.
 */
export const weakestBasis = (bases: readonly Basis[]): Basis =>
  BASES.findLast((basis) => bases.includes(basis)) ?? 'as scheduled';
