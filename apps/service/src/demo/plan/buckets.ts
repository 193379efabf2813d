import { amount } from './amounts.js';
import type { MaterialCode } from './materials.js';
import type { DemoPart } from './parts.js';
import { quantityOf } from './publish-schedules.js';
import type { LayerRecipe, Take } from './recipe.js';
import { isFromSetAside } from './set-aside.js';
import { draft, type Draft, type Need } from './step.js';
import { TANK_OF } from './tanks.js';
import { later } from './working-days.js';

/** The most that goes into one bucket, kg. */
const BUCKET_KG = 26;

/** What stays on rollers and walls of a bucket, as a fraction. */
const LEFT = 0.03;

/** Buckets as they are mixed, and what of them is wanted on the layer. */
export interface Buckets {
  readonly mixed: readonly Draft[];
  readonly needs: readonly Need[];
}

/** Mixes what a layer needs of a gel coat or resin with its catalyst, in as many buckets as it takes. */
export const bucketsOf = (part: DemoPart, recipe: LayerRecipe, take: Take, began: string): Buckets => {
  const { hull } = part;
  const colored = part.kind === 'hull molding' && take.materials.includes(hull.gelCoat);
  const material = colored ? hull.gelCoat : take.materials[0];
  const kg = (quantityOf(take, part.area) * hull.random.normal(1, 0.02)) / (1 - LEFT);
  const count = Math.ceil(kg / BUCKET_KG);
  const skin = recipe.code === 'H2';
  const setAside = skin && isFromSetAside(hull);
  const fromTank = !setAside && !(hull.skinFromDrum && skin);
  const mixes = Array.from({ length: count }, (_, i) => {
    const code = `B-${hull.serial}-${recipe.code}${part.tag}-${i + 1}`;
    return mix(
      code,
      material,
      kg / count,
      { at: later(began, 20 * i - 8), by: 'LAM-01', fromTank, setAside },
      hull.random,
    );
  });
  return { mixed: mixes.map(({ mixed }) => mixed), needs: mixes.map(({ need }) => need) };
};

interface Mixing {
  readonly at: string;
  readonly by: string;
  readonly fromTank: boolean;
  readonly setAside?: boolean;
}

/** One bucket of a material with its catalyst, and nearly all of it as what is wanted. */
export const mix = (
  code: string,
  material: MaterialCode,
  kg: number,
  { at, by, fromTank, setAside = false }: Mixing,
  random: { between(min: number, max: number): number },
): { readonly mixed: Draft; readonly need: Need } => {
  const tank = fromTank ? TANK_OF[material] : undefined;
  const coat = material.startsWith('GEL') || material.startsWith('FLOW');
  const inputs: readonly Need[] = [
    { material, amount: amount(kg, 'kg'), ...(tank === undefined ? {} : { tank }), ...(setAside ? { setAside } : {}) },
    { material: coat ? 'CAT-G' : 'CAT-M', amount: amount(kg * random.between(14.5, 17.5), 'mL', 'metered') },
    ...(material === 'FLOW-G' ? [{ material: 'PIG-G' as const, amount: amount(kg * 0.02, 'kg') }] : []),
  ];
  return {
    mixed: draft('makeMix', { name: `bucket ${code}`, at, by }, { code }, inputs),
    need: { lot: code, amount: amount(kg * (1 - LEFT), 'kg') },
  };
};
