import { amount } from './amounts.js';
import type { DemoPart } from './parts.js';
import { quantityOf } from './publish-schedules.js';
import type { LayerRecipe } from './recipe.js';
import { draft, type Draft, type Need } from './step.js';
import { later } from './working-days.js';

/** A kit as it is cut, and the whole of it as what is wanted on the layer; nothing of either when the layer has none. */
export interface Kit {
  readonly cut: readonly Draft[];
  readonly needs: readonly Need[];
}

export const kitCode = (part: DemoPart, recipe: LayerRecipe): string =>
  `K-${part.hull.serial}-${recipe.code}${part.tag}`;

/** Cuts the kit of a layer from rolls and sheets, a little more than the bare area for overlaps. */
export const kitOf = (part: DemoPart, recipe: LayerRecipe, began: string): Kit => {
  const takes = recipe.takes.filter(({ way }) => way === 'kit');
  if (takes.length === 0) return { cut: [], needs: [] };
  const code = kitCode(part, recipe);
  const inputs = takes.map((take) => ({
    material: take.materials[0],
    amount: amount(quantityOf(take, part.area) * part.hull.random.between(1.01, 1.05), take.unit, 'metered'),
  }));
  return {
    cut: [draft('cutKit', { name: `kit ${code}`, at: later(began, -45), by: 'LAM-06' }, { code }, inputs)],
    needs: [{ lot: code, amount: amount(1, 'pc', 'as scheduled') }],
  };
};
