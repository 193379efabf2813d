import type { RequiredReading } from '@hull-record/contracts';
import type { UnitCode } from '@hull-record/trade';
import type { MaterialCode } from './materials.js';

/**
 * One material of a layer, and the way it comes there.
 *
 * `bucket` is mixed with catalyst first, `gun` is sprayed, with the catalyst that the gun adds, `kit` is cut beforehand with the
 * layer's other kit materials, `store` is taken from the lot as it is.
 */
export interface Take {
  readonly way: 'bucket' | 'gun' | 'kit' | 'store';
  /** The first is what is used; a gel coat may be any of them, by the colour of the boat. */
  readonly materials: readonly [MaterialCode, ...MaterialCode[]];
  readonly unit: UnitCode;
  readonly perM2?: number;
  readonly perPart?: number;
}

/** A reading that is required, and what the shop usually reads. */
export interface ReadingRecipe extends RequiredReading {
  readonly mean: number;
  readonly deviation: number;
}

/** A layer as the schedule has it and as the shop makes it. `day` counts working days from the start of the hull. */
export interface LayerRecipe {
  readonly code: string;
  readonly name: string;
  readonly zone?: string;
  readonly plies: readonly string[];
  readonly day: number;
  readonly from: string;
  readonly minutes: number;
  readonly takes: readonly Take[];
  readonly readings?: readonly ReadingRecipe[];
  readonly holdPoint?: string;
  readonly latestNextMinutes?: number;
  /** Dry glass of each ply, g/m2, and the part of its laminate that is glass. */
  readonly laminate?: readonly (readonly [arealMass: number, fibreMassFraction: number])[];
  /** Part of the gel coat that overspray may take. */
  readonly lossAllowance?: number;
}

const SOURCE = 'invented for the demo';

/** Wet film of gel coat by mil gauge, each spot 16 to 22 mil. */
export const wetFilm = (spots: number): ReadingRecipe => ({
  ...{ what: 'wet film', spots, limits: { min: 16, max: 22, unit: 'mil' }, source: SOURCE },
  ...{ where: 'evenly over both sides and the transom', mean: 19.4, deviation: 1.35 },
});

/** Barcol hardness the morning after, each spot at least `min`. */
export const barcol = (spots: number, min: number): ReadingRecipe => ({
  ...{ what: 'Barcol hardness', spots, limits: { min, unit: 'Barcol' }, source: SOURCE },
  ...{ where: 'on the laminate side, 16 h after lay-up or later', mean: min + 5.5, deviation: 2.4 },
});

export const thickness = (spots: number, min: number, max: number): ReadingRecipe => ({
  ...{ what: 'thickness', spots, limits: { min, max, unit: 'mm' }, source: SOURCE },
  ...{ mean: (min + max) / 2, deviation: (max - min) / 6 },
});
