import { below, unit, type Exposure, type Random } from '@hull-record/statistics';

/** Sizes that the study states. */
export const SIZE = { hulls: 2_000, families: 10, lotsPerFamily: 30, claims: 40, heel: 0.2, strays: 0.05 };

/** The lot of each hull in one family, by the order of building. */
export type Used = Uint32Array;

/** Lots that last for runs of hulls of unlike length; now and then a container of the lot before or after is open. */
export const useLots = (random: Random, strays: number): Used => {
  const { hulls, lotsPerFamily } = SIZE;
  const lengths = Array.from({ length: lotsPerFamily }, () => 0.5 + unit(random));
  const all = lengths.reduce((a, b) => a + b, 0);
  let [lot, until] = [0, ((lengths[0] as number) / all) * hulls];
  return Uint32Array.from({ length: hulls }, (_, hull) => {
    while (hull >= until && lot < lotsPerFamily - 1) until += ((lengths[(lot += 1)] as number) / all) * hulls;
    const strayed = unit(random) < strays ? 2 * below(random, 2) - 1 : 0;
    return Math.min(lotsPerFamily - 1, Math.max(0, lot + strayed));
  });
};

/** What the scanner recorded: now and then another lot of the family. */
export const misread = (used: Used, random: Random, share: number): Used =>
  used.map((lot) => (unit(random) < share ? below(random, SIZE.lotsPerFamily) : lot));

/** Share of a delivery in a fill of the tank, the heel of the fill before being a fifth; the first fill is pure. */
export const shareInFill = (delivery: number, fill: number): number => {
  if (delivery > fill) return 0;
  return SIZE.heel ** (fill - delivery) * (delivery === 0 ? 1 : 1 - SIZE.heel);
};

/** Shares below this are no longer told. */
const FLOOR = 1e-6;

export const nameOf = (family: number, lot: number): string => `F${family} L${lot}`;

/** The exposures of a family; the first is the tank, where `used` are fills. */
export const exposuresOf = (family: number, used: Used): Exposure[] =>
  Array.from({ length: SIZE.lotsPerFamily }, (_, lot) => {
    const shareOf = (of: number): number => (family === 0 ? shareInFill(lot, of) : of === lot ? 1 : 0);
    const hulls = Uint32Array.from([...used.keys()].filter((hull) => shareOf(used[hull] as number) > FLOOR));
    const shares = Float64Array.from(hulls, (hull) => shareOf(used[hull] as number));
    return { lot: nameOf(family, lot), family: `F${family}`, hulls, shares };
  });
