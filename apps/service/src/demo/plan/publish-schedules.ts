import type { ScheduleLayer } from '@hull-record/contracts';
import type { UnitCode } from '@hull-record/trade';
import { amount } from './amounts.js';
import { MODELS, moldsOf, type DemoModel, type PartKind } from './models.js';
import { QUALITY } from './people.js';
import type { LayerRecipe, Take } from './recipe.js';
import { RECIPES } from './recipes.js';
import { draft, type Draft } from './step.js';
import { instant } from './working-days.js';

const at = instant(0, '06:40');
const by = QUALITY;

/** Models with their skins, schedules and molds. */
export const modelsAndSchedules = (): readonly Draft[] => MODELS.flatMap(withSchedules);

const withSchedules = (model: DemoModel): readonly Draft[] => [
  draft(
    'registerModel',
    { name: `model ${model.code}`, at, by },
    {
      ...{ code: model.code, name: model.name, skins: mutable(model.skins) },
      requiredParts: ['hull molding', 'deck', 'stringer grid'],
    },
  ),
  ...(Object.keys(RECIPES) as PartKind[]).flatMap((kind) => [schedule(model, kind), ...molds(model, kind)]),
];

const schedule = (model: DemoModel, partKind: PartKind): Draft => {
  const layers = RECIPES[partKind].map((recipe, i) => toLayer(recipe, RECIPES[partKind][i - 1], model.area[partKind]));
  return draft(
    'publishSchedule',
    { name: `schedule ${model.code} ${partKind}`, at, by, of: model.code },
    { partKind, version: 1, layers, ...(partKind === 'stringer grid' ? { process: 'spray-up' as const } : {}) },
  );
};

const molds = (model: DemoModel, partKind: PartKind): readonly Draft[] =>
  moldsOf(model, partKind).map((code) =>
    draft('registerMold', { name: `mold ${code}`, at, by }, { code, model: model.code, partKind }),
  );

const toLayer = (recipe: LayerRecipe, before: LayerRecipe | undefined, area: number): ScheduleLayer => ({
  ...{ code: recipe.code, name: recipe.name, zone: recipe.zone ?? 'whole part', plies: [...recipe.plies] },
  materials: recipe.takes.flatMap((take) => allowed(take, area)),
  readings: (recipe.readings ?? []).map(({ mean: _mean, deviation: _deviation, ...required }) => required),
  climate: {
    airTemperature: { min: 18, max: 30, unit: 'C' },
    relativeHumidity: { max: 80, unit: '%' },
  },
  areaM2: Math.round(area * (recipe.zone === undefined ? 1 : 0.5) * 10) / 10,
  ...(recipe.lossAllowance === undefined ? {} : { lossAllowance: recipe.lossAllowance }),
  ...(recipe.laminate === undefined ? {} : { laminate: toLaminate(recipe.laminate) }),
  predecessors: before === undefined ? [] : [before.code],
  ...(recipe.holdPoint === undefined ? {} : { holdPoint: recipe.holdPoint }),
  ...(recipe.latestNextMinutes === undefined
    ? {}
    : { layUpWindow: { earliestMinutes: 60, latestMinutes: recipe.latestNextMinutes } }),
});

/** Wide tolerances: gauges of the demo scatter, and overlaps are local. */
const toLaminate = (plies: NonNullable<LayerRecipe['laminate']>) => ({
  plies: plies.map(([value, fibreMassFraction]) => ({
    ...{ arealMass: { value, unit: 'g/m2' as const }, fibreMassFraction },
  })),
  tolerance: 0.45,
});

const allowed = (take: Take, area: number): ScheduleLayer['materials'] =>
  take.materials.map((material) => ({ material, target: target(quantityOf(take, area), take.unit) }));

/** What the schedule wants of a material on a part of this area. */
export const quantityOf = (take: Take, area: number): number => take.perPart ?? (take.perM2 ?? 0) * area;

const target = (quantity: number, unit: UnitCode) => ({ quantity: amount(quantity, unit).quantity, unit });

/** Skins as the contract types them: the same, without the promise that nobody changes them. */
const mutable = <T>(skins: T): Record<PartKind, never> => structuredClone(skins) as Record<PartKind, never>;
