import { grouped, hullOfPart, lotsInOrder } from './facts.js';
import type { WalkFacts } from './facts.js';
import { fractionsDownstream, roleFractions } from './fractions-downstream.js';
import { compare, divide, fromDecimal, multiply, sum, ZERO } from './rational.js';
import type { Rational } from './rational.js';

/** A part that holds some of the lot asked about. */
export interface PartWith {
  readonly part: string;
  /** Exact kg of the lot in the part. */
  readonly kg: Rational;
  /** kg of the lot in the part / kg of all lots of the same role in the part. */
  readonly share: Rational;
}

/** A hull that holds some of the lot asked about, however little. */
export interface HullWith {
  readonly hull: string;
  /** Sorted by part. */
  readonly parts: readonly PartWith[];
  /** Exact kg of the lot in the hull, what is below the floor included. */
  readonly kg: Rational;
  /** The largest share of the lot in any layer, joint or repair: its kg / kg of all lots of the same role there. */
  readonly placeShare: Rational;
  /** The same without what comes from lots that hold less of it than the floor. */
  readonly placeShareAboveFloor: Rational;
  /** The largest share in any part. */
  readonly partShare: Rational;
  /** True when the lot is below the floor in every lot used on the hull: its mass is then a trace. */
  readonly trace: boolean;
}

type Use = WalkFacts['uses'][number];

interface Holdings {
  /** Exact fraction of the lot asked about in each lot that holds any. */
  readonly fractions: ReadonlyMap<string, Rational>;
  readonly roles: ReadonlyMap<string, ReadonlyMap<string, Rational>>;
  /** Of the lot asked about itself: one role when it is received, perhaps several when it is made. */
  readonly ownRoles: ReadonlyMap<string, Rational>;
}

/**
 * All hulls that hold any of a lot, received or made, sorted by hull; parts joined to no hull are left out.
 *
 * A mixture has no role of its own: its share is taken for each role of its ultimate sources (the kg of that role which
 * came with the mixture / all kg of that role in the place), and the largest counts. `floor` is a fraction of a used
 * lot's mass and only decides what is called a trace. A lot that is not among the facts
 * gives an error.
 */
export const walkHullsWith = (source: string, facts: WalkFacts, { floor }: { floor: number }): readonly HullWith[] => {
  const ordered = lotsInOrder(facts);
  const roles = roleFractions(ordered);
  if (!roles.has(source)) throw new Error(`No lot ${source} among the facts.`);
  const holdings = { fractions: fractionsDownstream(source, ordered), roles, ownRoles: roles.get(source) ?? new Map() };
  const hullOf = hullOfPart(facts);
  const joined = facts.uses.filter((use) => hullOf.has(use.part));
  return [...grouped(joined, (use) => hullOf.get(use.part) ?? '')]
    .filter(([, uses]) => uses.some((use) => holdings.fractions.has(use.lot)))
    .map(([hull, uses]) => hullWith(hull, uses, holdings, fromDecimal(String(floor))))
    .sort((a, b) => (a.hull < b.hull ? -1 : 1));
};

const hullWith = (hull: string, uses: readonly Use[], holdings: Holdings, floor: Rational): HullWith => {
  const parts = [...grouped(uses, (use) => use.part)]
    .filter(([, own]) => own.some((use) => holdings.fractions.has(use.lot)))
    .map(([part, own]) => ({ part, kg: kgIn(own, holdings.fractions), share: shareIn(own, holdings) }))
    .sort((a, b) => (a.part < b.part ? -1 : 1));
  const places = [...grouped(uses, ({ part, place }) => JSON.stringify([part, place])).values()];
  return {
    hull,
    parts,
    kg: kgIn(uses, holdings.fractions),
    placeShare: largest(places.map((own) => shareIn(own, holdings))),
    placeShareAboveFloor: largest(places.map((own) => shareIn(own, holdings, floor))),
    partShare: largest(parts.map((part) => part.share)),
    trace: uses.every((use) => compare(holdings.fractions.get(use.lot) ?? ZERO, floor) < 0),
  };
};

const kgIn = (uses: readonly Use[], fractions: ReadonlyMap<string, Rational>, floor = ZERO): Rational =>
  sum(
    uses.map(({ lot, kg }) => {
      const fraction = fractions.get(lot) ?? ZERO;
      return compare(fraction, floor) < 0 ? ZERO : multiply(fromDecimal(kg), fraction);
    }),
  );

/** The share in one place; uses of lots that hold less than the floor add nothing, yet count as material there. */
const shareIn = (uses: readonly Use[], { fractions, roles, ownRoles }: Holdings, floor = ZERO): Rational => {
  const kg = kgIn(uses, fractions, floor);
  if (kg.numerator === 0n) return ZERO;
  return largest(
    [...ownRoles].map(([role, ofLot]) => {
      const ofRole = uses.map((use) => multiply(fromDecimal(use.kg), roles.get(use.lot)?.get(role) ?? ZERO));
      return divide(multiply(kg, ofLot), sum(ofRole));
    }),
  );
};

const largest = (all: readonly Rational[]): Rational =>
  all.reduce((most, each) => (compare(each, most) > 0 ? each : most), ZERO);
