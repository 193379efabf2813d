import fc from 'fast-check';
import type { PlantModel } from '../plant-model.js';
import type { ModelDraw, Source } from '../model-facts.js';
import type { Plant } from '../plant.js';

/** One act of a week: done on the real plant and told to the model. An act that cannot be done does nothing. */
export interface Act {
  readonly name: string;
  run(plant: Plant, model: PlantModel): Promise<void>;
}

/** Minutes by which something is entered late; most is entered at once. */
export const late = fc.oneof(
  { weight: 3, arbitrary: fc.constant(0) },
  { weight: 2, arbitrary: fc.integer({ min: 1, max: 90 }) },
);
export const kilograms = fc.integer({ min: 1, max: 200 });
/** Which one of many is meant, counted round. */
export const nth = fc.nat({ max: 1_000 });
/** From what is drawn. */
export const source = fc.constantFrom('lot' as const, 'lot' as const, 'tank' as const, 'gun' as const, 'gun' as const);

export const pick = <T>(all: readonly T[], n: number): T | undefined => all[n % Math.max(1, all.length)];

export const time = (at: number): string => new Date(at).toISOString().slice(5, 19);

/** The source meant, among what was there at an instant. */
export const sourceOf = (
  model: PlantModel,
  { of, n, at }: { readonly of: 'lot' | 'tank' | 'gun'; readonly n: number; readonly at: number },
): Source | undefined => {
  if (of === 'tank') return { tank: true };
  if (of === 'gun') return { gun: true };
  const lot = pick(model.lotsBy(at), n);
  return lot === undefined ? undefined : { lot };
};

export const named = (from: Source): string => ('lot' in from ? from.lot : 'tank' in from ? 'the tank' : 'the gun');

/** Tells the model what an entry drew. */
export const tellDraw = async (
  plant: Plant,
  model: PlantModel,
  entry: string,
  draw: Omit<ModelDraw, 'root'>,
): Promise<void> => {
  model.draws.push({ ...draw, root: await plant.drawnBy(entry, draw.table, draw.kg) });
};
