import { MassMissing } from './errors.js';

/** A mass of one role in one place. */
export interface PlaceKg {
  /** Layer, joint or repair. */
  readonly place: string;
  /** Material role of the source the mass goes back to. */
  readonly role: string;
  readonly kg: number;
}

/** The place and role in which a source has its largest share. */
export interface PlaceShare {
  readonly place: string;
  readonly role: string;
  /** kg of the source per kg of all lots of the role in the place. */
  readonly share: number;
}

/**
 * The share of a source: its kg / the kg of all lots of the same role in the same place.
 *
 * Nothing is clamped: a share above 1 means that the two masses do not belong together, and should be seen.
 *
 * @throws MassMissing when the role's total is not a number above 0.
 */
export const share = (kgOfSource: number, kgOfRole: number): number => {
  if (!Number.isFinite(kgOfRole) || kgOfRole <= 0) throw new MassMissing(kgOfRole);
  return kgOfSource / kgOfRole;
};

/**
 * The largest share a source has in any place, or null when it is in none.
 *
 * `ofSource` may name a place several times, once for every path by which the source came there; they are summed before
 * dividing, for a source can be under a threshold on each path and over it in the layer. `ofAll` are all lots in those
 * places, the source included. Of equal shares the first named counts.
 *
 * @throws MassMissing when a place of the source has no mass of its role in `ofAll`.
 */
export const largestShare = (ofSource: readonly PlaceKg[], ofAll: readonly PlaceKg[]): PlaceShare | null => {
  const totals = byPlaceAndRole(ofAll);
  let largest: PlaceShare | null = null;
  for (const [key, { place, role, kg }] of byPlaceAndRole(ofSource)) {
    const here = { place, role, share: share(kg, totals.get(key)?.kg ?? 0) };
    if (largest === null || here.share > largest.share) largest = here;
  }
  return largest;
};

/** The masses of one role in one place, summed. */
const byPlaceAndRole = (rows: readonly PlaceKg[]): ReadonlyMap<string, PlaceKg> => {
  const sums = new Map<string, PlaceKg>();
  for (const { place, role, kg } of rows) {
    const key = JSON.stringify([place, role]);
    sums.set(key, { place, role, kg: kg + (sums.get(key)?.kg ?? 0) });
  }
  return sums;
};
