import type { CaseAnswer, CaseClass } from '@hull-record/contracts';
import {
  attribute,
  leaderOf,
  lotsOf,
  sharesOf,
  type Attribution,
  type JudgedClass,
  type SuspectClass,
} from '@hull-record/statistics';
import type { CaseInputs, LotInHulls } from '../inputs/case-inputs.js';
import { type CaseSettings, SHOWN_SHARES } from '../settings.js';
import { figure, judgedArrays } from './judged-arrays.js';
import { rowFigures } from './row-figures.js';

/** Lots compared: the part of the answer that is about them, and the attribution behind it. */
export interface Compared {
  readonly attribution: Attribution;
  readonly part: Pick<CaseAnswer, 'verdict' | 'stable' | 'tests' | 'classes' | 'untestable' | 'cover'>;
  /** The class that the verdict is given for. */
  readonly leader: CaseClass | null;
}

/** So many classes that cannot be judged are named one by one. */
const UNTESTABLE_NAMED = 100;

/** Compares the lots of a case by its frozen settings. */
export const compareLots = ({ hulls, lots }: CaseInputs, { attribution: frozen }: CaseSettings): Compared => {
  const exposures = lots.map(({ lot, family, hulls: places, shares }) => ({
    lot,
    family,
    hulls: places instanceof Uint32Array ? places : new Uint32Array(places),
    shares: shares instanceof Float64Array ? shares : new Float64Array(shares),
  }));
  const attribution = attribute(judgedArrays(hulls), exposures, frozen);
  const told = new Map(lots.map((lot) => [keyOf(lot), lot]));
  const claimed = hulls.map(({ claimed: has }) => has);
  const nameAt = (place: number): string => namedWithPlaces(attribution.weighedClasses[place]?.suspect as SuspectClass);
  const classes = attribution.rows.map((row) => classOf(row, told, claimed));
  return {
    attribution,
    leader: leaderOf(classes),
    part: {
      ...{ verdict: attribution.verdict, stable: attribution.stable },
      tests: attribution.tests,
      classes,
      untestable: {
        count: attribution.untestable.length,
        classes: [...attribution.untestable]
          .sort((a, b) => b.observed - a.observed || a.smallestP - b.smallestP)
          .slice(0, UNTESTABLE_NAMED)
          .map(({ suspect, observed, smallestP }) => ({
            ...{ named: named(suspect), hulls: suspect.hulls.length, observed, smallestP },
          })),
      },
      cover: {
        steps: attribution.cover.steps.map(({ taken, gain, runnerUp, tie }) => ({
          ...{ named: nameAt(taken), explains: gain, tie },
          runnerUp: runnerUp === null ? null : nameAt(runnerUp.place),
        })),
        unexplained: attribution.cover.unexplained.map((place) => hulls[place]?.number ?? ''),
      },
    },
  };
};

/** No code has a line break. */
const keyOf = ({ lot, family }: { readonly lot: string; readonly family: string }): string => `${family}\n${lot}`;

/** A class by all its members, so that none is hidden behind another: lots, then where each is. */
export const named = (suspect: SuspectClass): string => {
  const lots = [...lotsOf(suspect)].sort();
  const shown = lots.slice(0, 6).join(' and ');
  return lots.length > 6 ? `${shown} and ${lots.length - 6} more` : shown;
};

/** A class with where its lots went: one lot in two kinds of layer is two classes, which its code alone does not tell apart. */
const namedWithPlaces = (suspect: SuspectClass): string => {
  const places = [...new Set(suspect.members.map(({ family }) => family))].sort();
  const shown = places.slice(0, 2).join(' and ');
  return `${named(suspect)} (${places.length > 2 ? `${shown} and ${places.length - 2} more` : shown})`;
};

const classOf = (row: JudgedClass, told: ReadonlyMap<string, LotInHulls>, claimed: readonly boolean[]): CaseClass => {
  const members = row.suspect.members.map(({ lot, family }) => {
    const { supplierLot = null, material = null } = told.get(keyOf({ lot, family })) ?? {};
    return { lot, supplierLot, material, family };
  });
  const wholes = row.suspect.members.flatMap((member) => told.get(keyOf(member)) ?? []);
  const shares = sharesOf(row.suspect);
  return {
    ...rowFigures(row, named(row.suspect)),
    ...{ lots: [...lotsOf(row.suspect)].sort(), members, adjustedP: row.adjusted, posterior: row.posterior },
    ...{ strength: row.strength, nearlySame: [...row.nearlySame].sort() },
    dose: row.dose && { z: row.dose.z, p: row.dose.p },
    atShares: SHOWN_SHARES.map((fromShare) => atShare(wholes, fromShare, claimed)),
    shares: shares && spread(shares),
  };
};

/** Hulls that have at least so much of one of the lots of a class. */
const atShare = (lots: readonly LotInHulls[], fromShare: number, claimed: readonly boolean[]) => {
  const places = [
    ...new Set(lots.flatMap(({ hulls, shares }) => Array.from(hulls).filter((_, i) => (shares[i] ?? 0) >= fromShare))),
  ];
  return { fromShare, hulls: places.length, withClaim: places.filter((place) => claimed[place]).length };
};

const spread = (shares: Float64Array): CaseClass['shares'] => {
  const sorted = Float64Array.from(shares).sort();
  const [least, median, most] = [sorted[0], sorted[sorted.length >> 1], sorted.at(-1)];
  return { least: figure(least ?? 0) ?? 0, median: median ?? 0, most: most ?? 0 };
};
