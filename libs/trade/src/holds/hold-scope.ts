/** How far a hold reaches. */
export interface HoldScope {
  /** Least share of a layer, 0 to 1. */
  readonly minShare: number;
  /** Zone of the laminate schedule; null: all. */
  readonly zone: string | null;
  /** First and last instant, ISO 8601, of what was made with it; null: no bound. */
  readonly from: string | null;
  readonly until: string | null;
}

/** A hold that reaches as far as it can. */
export const WHOLE_SCOPE: HoldScope = { minShare: 0, zone: null, from: null, until: null };

/** What a change of scope does against the rule that a hold is only ever narrowed. */
export type WiderField = keyof HoldScope;

const earlier = (a: string, b: string): boolean => Date.parse(a) < Date.parse(b);

/** Fields by which a scope reaches further than the one before; none when it is as narrow or narrower. */
export const widerFields = (before: HoldScope, after: HoldScope): readonly WiderField[] => [
  ...(after.minShare < before.minShare ? (['minShare'] as const) : []),
  ...(before.zone !== null && after.zone !== before.zone ? (['zone'] as const) : []),
  ...(before.from !== null && (after.from === null || earlier(after.from, before.from)) ? (['from'] as const) : []),
  ...(before.until !== null && (after.until === null || earlier(before.until, after.until))
    ? (['until'] as const)
    : []),
];

/** Whether two scopes reach alike. */
export const isSameScope = (a: HoldScope, b: HoldScope): boolean =>
  widerFields(a, b).length === 0 && widerFields(b, a).length === 0;
