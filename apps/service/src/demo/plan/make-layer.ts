import { amount } from './amounts.js';
import { bucketsOf } from './buckets.js';
import { kitOf } from './kits.js';
import type { DemoPart } from './parts.js';
import { LAMINATORS, LEAD } from './people.js';
import { quantityOf } from './publish-schedules.js';
import type { LayerRecipe, Take } from './recipe.js';
import { draft, type Draft, type Need } from './step.js';
import { TANK_OF } from './tank.js';
import { instant, later } from './working-days.js';

/** When a layer of a part is made. */
export interface LayerTimes {
  readonly began: string;
  readonly ended: string;
}

/** Name of the step that records a layer; its id is the layer record's. */
export const layerStep = (part: DemoPart, recipe: LayerRecipe): string => `${part.number} ${recipe.code}`;

export const timesOf = (part: DemoPart, recipe: LayerRecipe): LayerTimes => {
  const began = later(instant(part.hull.startDay + recipe.day, recipe.from), part.hull.random.whole(0, 12));
  return { began, ended: later(began, recipe.minutes + part.hull.random.whole(-5, 8)) };
};

/** Makes a layer: its buckets are mixed and its kit is cut, then it is laid up and recorded. */
export const makeLayer = (part: DemoPart, recipe: LayerRecipe, { began, ended }: LayerTimes): readonly Draft[] => {
  const buckets = recipe.takes
    .filter(({ way }) => way === 'bucket')
    .map((take) => bucketsOf(part, recipe, take, began));
  const kits = kitOf(part, recipe, began);
  const needs = [
    ...buckets.flatMap(({ needs }) => needs),
    ...kits.needs,
    ...recipe.takes.flatMap((take) => straight(part, take)),
  ];
  const [first = LEAD, second = LEAD] = crewOf(part);
  const made = draft(
    'recordLayer',
    { name: layerStep(part, recipe), at: ended, began, by: first, of: part.number },
    { layer: recipe.code, startedAt: began, endedAt: ended, doneBy: [first, second], climate: climateOf(part) },
    needs,
  );
  return [...buckets.flatMap(({ mixed }) => mixed), ...kits.cut, made];
};

const crewOf = ({ hull: { random } }: DemoPart): readonly string[] => {
  const first = random.whole(0, LAMINATORS.length - 1);
  const second = (first + random.whole(1, LAMINATORS.length - 1)) % LAMINATORS.length;
  return [first, second].flatMap((i) => LAMINATORS[i] ?? []);
};

/** What goes on the layer as it comes from the tank or the store; resin from a tank gets its catalyst at the gun. */
const straight = ({ hull: { random }, area }: DemoPart, take: Take): readonly Need[] => {
  const [material] = take.materials;
  if (take.way === 'store') {
    const exact = take.unit === 'pc' ? 1 : random.normal(1, 0.025);
    return [{ material, amount: amount(quantityOf(take, area) * exact, take.unit) }];
  }
  const tank = TANK_OF[material];
  if (take.way !== 'tank' || tank === undefined) return [];
  const kg = quantityOf(take, area) * random.normal(1, 0.03);
  return [
    { material, tank, amount: amount(kg, 'kg', 'apportioned') },
    { material: 'CAT-M', amount: amount(kg * random.between(15, 17), 'mL', 'metered') },
  ];
};

/** The mold follows the air of the shop. */
const climateOf = ({ hull: { random } }: DemoPart) => {
  const air = random.normal(22.5, 1.4);
  return {
    airTemperature: { value: round(air), unit: 'C' as const },
    moldTemperature: { value: round(air + random.normal(-0.6, 0.4)), unit: 'C' as const },
    relativeHumidity: { value: Math.round(random.normal(58, 5)), unit: '%' as const },
  };
};

const round = (value: number): number => Math.round(value * 10) / 10;
