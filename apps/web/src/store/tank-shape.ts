/** A share of what is in a tank. */
export interface TankShare {
  /** Received lot; null: what is below one part in a thousand million. */
  readonly source: string | null;
  readonly kg: number;
}

/** A rectangle in a drawing, with what it stands for. */
export interface TankBand extends TankShare {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface TankShape {
  readonly width: number;
  readonly height: number;
  readonly bands: readonly TankBand[];
}

/** Square units of the drawing for one kilogram, so that the largest tank has this area. */
const LARGEST = 30_000;
/** Width to height of every tank: areas alone tell them apart. */
const SHAPE = 0.8;

/**
 * A tank as a rectangle whose area is kilograms: the whole is what it can hold, each band what it holds of one lot.
 *
 * Bands stand side by side and not on each other, since a tank is taken to be well mixed. More than fits is drawn full.
 *
 * @param capacityKg kg that the tank can hold
 * @param largestKg capacity of the largest tank that is drawn to the same scale
 */
export const tankShape = (capacityKg: number, largestKg: number, shares: readonly TankShare[]): TankShape => {
  const area = (LARGEST * capacityKg) / largestKg;
  const width = Math.sqrt(area * SHAPE);
  const height = area / width;
  const held = shares.reduce((sum, { kg }) => sum + kg, 0);
  const level = height * Math.min(1, held / capacityKg);
  let x = 0;
  const bands = shares
    .filter(({ kg }) => kg > 0)
    .map((share) => {
      const band = { ...share, x, y: height - level, width: (width * share.kg) / held, height: level };
      x += band.width;
      return band;
    });
  return { width, height, bands };
};
