import { amount } from './amounts.js';
import { bucketsOf } from './buckets.js';
import { kitOf } from './kits.js';
import { dayOfLayer, NIGHT_LAYER, type DemoPart } from './parts.js';
import { AREA_OF } from './climate.js';
import { GUN_OF } from './guns.js';
import { LAMINATORS, LEAD, NIGHT_CREW, NIGHT_LEAD } from './people.js';
import { quantityOf } from './publish-schedules.js';
import type { LayerRecipe, Take } from './recipe.js';
import { draft, type Draft, type Need } from './step.js';
import { instant, later } from './working-days.js';

/** When a layer of a part is made. */
export interface LayerTimes {
  readonly began: string;
  readonly ended: string;
}

/** Name of the step that records a layer; its id is the layer record's. */
export const layerStep = (part: DemoPart, recipe: LayerRecipe): string => `${part.number} ${recipe.code}`;

export const timesOf = (part: DemoPart, recipe: LayerRecipe): LayerTimes => {
  const night = part.hull.atNight && recipe.code === NIGHT_LAYER;
  const from = instant(part.hull.startDay + dayOfLayer(part, recipe), night ? '21:30' : recipe.from);
  const began = later(from, part.hull.random.whole(0, 12));
  return { began, ended: later(began, recipe.minutes + part.hull.random.whole(-5, 8)) };
};

/** Makes a layer: its buckets are mixed and its kit is cut, then it is laid up and recorded. */
export const makeLayer = (part: DemoPart, recipe: LayerRecipe, { began, ended }: LayerTimes): readonly Draft[] => {
  const buckets = recipe.takes
    .filter(({ way, materials }) => way === 'bucket' || (way === 'gun' && isBucketed(part, materials)))
    .map((take) => bucketsOf(part, recipe, take, began));
  const kits = kitOf(part, recipe, began);
  const needs = [
    ...buckets.flatMap(({ needs }) => needs),
    ...kits.needs,
    ...recipe.takes.flatMap((take) => straight(part, take)),
  ];
  const [first = LEAD, second = LEAD] = crewOf(part, recipe);
  const by = crewedAtNight(part, recipe) ? NIGHT_LEAD : first;
  const made = draft(
    'recordLayer',
    { name: layerStep(part, recipe), at: ended, began, by, of: part.number },
    {
      ...{ layer: recipe.code, startedAt: began, endedAt: ended, doneBy: [first, second] },
      ...{ climate: climateOf(part), area: AREA_OF[part.kind] },
    },
    needs,
  );
  return [...buckets.flatMap(({ mixed }) => mixed), ...kits.cut, made];
};

/** Navy gel coat is brushed from buckets: the gun of the gel coats stays with white. */
const isBucketed = ({ hull, kind }: DemoPart, materials: Take['materials']): boolean =>
  kind === 'hull molding' && materials[0] === 'GEL-W' && hull.gelCoat !== 'GEL-W';

const crewedAtNight = ({ hull }: DemoPart, { code }: LayerRecipe): boolean => hull.atNight && code === NIGHT_LAYER;

const crewOf = (part: DemoPart, recipe: LayerRecipe): readonly string[] => {
  if (crewedAtNight(part, recipe)) return NIGHT_CREW;
  const { random } = part.hull;
  const first = random.whole(0, LAMINATORS.length - 1);
  const second = (first + random.whole(1, LAMINATORS.length - 1)) % LAMINATORS.length;
  return [first, second].flatMap((i) => LAMINATORS[i] ?? []);
};

/** What goes on the layer as it comes from the store, or through a gun, which adds the catalyst. */
const straight = (part: DemoPart, take: Take): readonly Need[] => {
  const { hull, area } = part;
  const { random } = hull;
  const [material] = take.materials;
  if (take.way === 'store') {
    const exact = take.unit === 'pc' ? 1 : random.normal(1, 0.025);
    return [{ material, amount: amount(quantityOf(take, area) * exact, take.unit) }];
  }
  const gun = GUN_OF[material];
  if (take.way !== 'gun' || gun === undefined || isBucketed(part, take.materials)) return [];
  return [{ material, gun, amount: amount(quantityOf(take, area) * random.normal(1, 0.03), 'kg', 'metered') }];
};

/** The mold follows the air of the shop. */
const climateOf = ({ hull: { random } }: DemoPart) => {
  const air = Math.min(27.5, Math.max(18.6, random.normal(22.5, 1.4)));
  return {
    airTemperature: { value: round(air), unit: 'C' as const },
    moldTemperature: { value: round(air + random.normal(-0.6, 0.4)), unit: 'C' as const },
    relativeHumidity: { value: Math.min(77, Math.round(random.normal(58, 5))), unit: '%' as const },
  };
};

const round = (value: number): number => Math.round(value * 10) / 10;
