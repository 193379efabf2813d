import { divide, fromDecimal, sum } from './rational.js';
import type { Rational } from './rational.js';

/** The facts a genealogy is walked from, as recorded; masses are decimal kg, exact. */
export interface WalkFacts {
  readonly lots: readonly { readonly id: string; readonly role: string; readonly received: boolean }[];
  readonly inputs: readonly { readonly lot: string; readonly input: string; readonly quantity: string }[];
  /** `place` is a layer, joint or repair of the part; two parts may use the same name for one. */
  readonly uses: readonly {
    readonly place: string;
    readonly part: string;
    readonly lot: string;
    readonly kg: string;
  }[];
  readonly joins: readonly { readonly part: string; readonly hull: string }[];
}

/** One lot: what it is, and each input with the exact fraction that it is of the lot's mass. */
export interface WalkLot {
  readonly id: string;
  readonly role: string;
  readonly received: boolean;
  readonly inputs: readonly { readonly lot: string; readonly fraction: Rational }[];
}

/**
 * All lots, each after everything it is made of. A lot without inputs is a source, whatever its origin.
 *
 * Lots are taken as soon as all their inputs have been, again and again until none is left: no call stack, however deep
 * the chain. Throws when an input names no lot, when lots are made of each other, or when inputs weigh nothing.
 */
export const lotsInOrder = (facts: WalkFacts): readonly WalkLot[] => {
  const inputs = grouped(facts.inputs, (input) => input.lot);
  const lots: readonly WalkLot[] = facts.lots.map((lot) => ({ ...lot, inputs: fractionsOf(inputs.get(lot.id) ?? []) }));
  const ordered = new Map<string, WalkLot>();
  for (let before = -1; before < ordered.size;) {
    before = ordered.size;
    for (const lot of lots) {
      if (lot.inputs.every((input) => ordered.has(input.lot))) ordered.set(lot.id, lot);
    }
  }
  const stuck = lots.filter((lot) => !ordered.has(lot.id)).map((lot) => lot.id);
  if (stuck.length > 0) throw new Error(`Made of each other, or of a lot that is missing: ${stuck.join(', ')}.`);
  return [...ordered.values()];
};

const fractionsOf = (inputs: WalkFacts['inputs']): WalkLot['inputs'] => {
  const total = sum(inputs.map((input) => fromDecimal(input.quantity)));
  return inputs.map(({ input, quantity }) => ({ lot: input, fraction: divide(fromDecimal(quantity), total) }));
};

/** Rows by what they have in common, in the order in which it first appears. */
export const grouped = <Row>(
  rows: readonly Row[],
  keyOf: (row: Row) => string,
): ReadonlyMap<string, readonly Row[]> => {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group) group.push(row);
    else groups.set(keyOf(row), [row]);
  }
  return groups;
};

/** The hull each joined part is on; a part joined twice is on the last. */
export const hullOfPart = (facts: WalkFacts): ReadonlyMap<string, string> =>
  new Map(facts.joins.map(({ part, hull }) => [part, hull]));
