import fc from 'fast-check';
import { below, seeded, unit, type Exposure, type Judged, type Random } from '@hull-record/statistics';

/** Small cases: hulls with ages, claims and strata, and whether each is exposed. */
export const smallCase = fc
  .array(
    fc.record({
      age: fc.nat({ max: 8 }),
      claimed: fc.nat({ max: 1 }),
      stratum: fc.nat({ max: 2 }),
      exposed: fc.boolean(),
      late: fc.nat({ max: 8 }),
    }),
    { minLength: 4, maxLength: 30 },
  )
  .map((drawn) => {
    const hulls = drawn.map(({ late, ...hull }) => ({ ...hull, from: late < hull.age ? late : 0 }));
    return { hulls, ...arraysOf(hulls) };
  });

interface Hull {
  readonly age: number;
  readonly claimed: number;
  readonly stratum: number;
  readonly exposed: boolean;
  readonly from: number;
}

const arraysOf = (hulls: readonly Hull[]): { judged: Judged; exposed: Uint32Array } => ({
  judged: {
    ages: Float64Array.from(hulls, ({ age }) => age),
    from: Float64Array.from(hulls, ({ from }) => from),
    claimed: Uint8Array.from(hulls, ({ claimed }) => claimed),
    strata: Uint32Array.from(hulls, ({ stratum }) => stratum),
  },
  exposed: Uint32Array.from(hulls.flatMap(({ exposed }, hull) => (exposed ? [hull] : []))),
});

/** An invented plant: hulls in the order of building, lots of several roles that last for runs of hulls. */
export interface Plant {
  readonly hulls: number;
  readonly roles: number;
  readonly lotsPerRole: number;
  /** Chance of a claim of a hull that is watched to the end, without a bad lot. */
  readonly background: number;
  /** Chance that a hull with the bad lot has a claim in the end; 0 plants none. */
  readonly bad: number;
}

/** The lot that is planted. */
export const PLANTED = 'role 1 lot 3';

/** Lives a plant: ages by chance, claims of the background and of the planted lot, strata of build quarters. */
export const livePlant = (
  { hulls, roles, lotsPerRole, background, bad }: Plant,
  seed: number,
): { judged: Judged; exposures: Exposure[] } => {
  const random = seeded(seed);
  const exposures = Array.from({ length: roles }, (_, role) => lotsOfRole(role, { hulls, lotsPerRole }, random)).flat();
  const planted = new Set(exposures.find(({ lot }) => lot === PLANTED)?.hulls);
  const [ages, claimed] = [new Float64Array(hulls), new Uint8Array(hulls)];
  for (let hull = 0; hull < hulls; hull += 1) {
    const watched = 200 + 800 * unit(random);
    const chances = [background, planted.has(hull) ? bad : 0];
    const first = Math.min(...chances.map((chance) => (unit(random) < chance ? 1000 * unit(random) : Infinity)));
    ages[hull] = Math.min(first, watched);
    claimed[hull] = first <= watched ? 1 : 0;
  }
  const strata = Uint32Array.from({ length: hulls }, (_, hull) => Math.floor((hull * 4) / hulls));
  return { judged: { ages, claimed, strata }, exposures };
};

const lotsOfRole = (
  role: number,
  { hulls, lotsPerRole }: { hulls: number; lotsPerRole: number },
  random: Random,
): Exposure[] => {
  const used: number[][] = Array.from({ length: lotsPerRole }, () => []);
  for (let hull = 0; hull < hulls; hull += 1) {
    const strayed = below(random, 5) === 0 ? below(random, 3) - 1 : 0;
    const lot = Math.floor((hull * lotsPerRole) / hulls + role / 10) + strayed;
    used[Math.min(lotsPerRole - 1, Math.max(0, lot))]?.push(hull);
  }
  return used.map((own, lot) => ({
    lot: `role ${role} lot ${lot}`,
    family: `role ${role}`,
    hulls: Uint32Array.from(own),
  }));
};
