import { below, seeded, unit, type Exposure, type Judged } from '@hull-record/statistics';

/** How large a generated case is. */
export interface CaseSize {
  readonly hulls: number;
  readonly lots: number;
  readonly lotsPerHull: number;
  readonly claims: number;
  /** Strata in the order of building; lots go into hulls that are built near each other. */
  readonly strata: number;
}

/**
 * A generated case without any bad lot: hulls built in a row, each of `lotsPerHull` roles with a lot that lasts for a run of
 * hulls, a twentieth of the uses out of order; claims by chance at random ages.
 */
export const generatedCase = (size: CaseSize, seed: number): { judged: Judged; exposures: readonly Exposure[] } => {
  const random = seeded(seed);
  const perRole = Math.ceil(size.lots / size.lotsPerHull);
  const run = size.hulls / perRole;
  const used: number[][] = Array.from({ length: perRole * size.lotsPerHull }, () => []);
  for (let hull = 0; hull < size.hulls; hull += 1)
    for (let role = 0; role < size.lotsPerHull; role += 1) {
      const strayed = below(random, 20) === 0 ? below(random, 3) - 1 : 0;
      const lot = Math.min(perRole - 1, Math.max(0, Math.floor(hull / run + role / size.lotsPerHull) + strayed));
      used[role * perRole + lot]?.push(hull);
    }
  const ages = Float64Array.from({ length: size.hulls }, () => 1 + 3_000 * unit(random));
  const claimed = new Uint8Array(size.hulls);
  for (let left = size.claims; left > 0;) {
    const hull = below(random, size.hulls);
    if (claimed[hull] === 0) {
      claimed[hull] = 1;
      left -= 1;
    }
  }
  const strata = Uint32Array.from({ length: size.hulls }, (_, hull) => Math.floor((hull * size.strata) / size.hulls));
  const exposures = used.map((hulls, lot) => ({
    lot: `lot ${lot}`,
    family: `role ${Math.floor(lot / perRole)}`,
    hulls: Uint32Array.from(hulls),
  }));
  return { judged: { ages, claimed, strata }, exposures };
};
