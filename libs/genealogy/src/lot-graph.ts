import type { Composition } from './composition.js';
import { LotUnknown } from './errors.js';

/** One amount of one lot that went into another. */
export interface Input {
  /** The made lot. */
  readonly lot: string;
  /** The lot that went into it. */
  readonly input: string;
  /** kg, at least 0. */
  readonly kg: number;
}

/** What of another lot is in a lot. */
export interface LotPart {
  readonly lot: string;
  /** kg, at least 0. */
  readonly kg: number;
  /** How weakly the amount is known; 0, the strongest, when left out. */
  readonly weakness?: number;
}

/** A lot and what it is directly made of. */
export interface LotNode {
  readonly id: string;
  /** Material role; it counts for a received lot only, a made lot has the roles of its sources. */
  readonly role: string;
  /** A composition already kept, such as a tank lot's: the walk stops here. Received lots need none. */
  readonly known?: Composition;
  /** None for a source. The same lot may come twice. */
  readonly inputs: readonly LotPart[];
}

/** Lots by id. */
export type LotGraph = ReadonlyMap<string, LotNode>;

/**
 * The node of a lot.
 *
 * @throws LotUnknown when the graph does not hold it.
 */
export const nodeOf = (lot: string, graph: LotGraph): LotNode => {
  const node = graph.get(lot);
  if (node === undefined) throw new LotUnknown(lot);
  return node;
};
