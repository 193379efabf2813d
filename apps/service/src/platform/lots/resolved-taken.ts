import type { DrawnFrom, PartOfSpray } from './drawn-row.js';
import type { FoundLot } from './find-lots.js';
import type { KnownAmount } from './known-amount.js';

/** An amount taken from a lot that is known. */
export interface ResolvedTaken {
  readonly lot: FoundLot;
  readonly drawn: DrawnFrom;
  /** Set when it is part of what a gun sprayed as one. */
  readonly spray?: PartOfSpray;
  readonly amount: KnownAmount;
}
