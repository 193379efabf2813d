import { judgeSpot } from '@hull-record/trade';
import { layerStep, type LayerTimes } from './make-layer.js';
import { dayOfLayer, NIGHT_LAYER, type DemoPart } from './parts.js';
import { BARCOL, INSPECTORS, MIL_GAUGE, QUALITY, THICKNESS_GAUGE } from './people.js';
import { somewhere } from './places.js';
import type { LayerRecipe, ReadingRecipe } from './recipe.js';
import { draft, type Draft, type Seeded } from './step.js';
import { instant, later } from './working-days.js';

const GAUGES: Readonly<Record<string, string>> = {
  'wet film': MIL_GAUGE,
  'Barcol hardness': BARCOL,
  thickness: THICKNESS_GAUGE,
};
const UNITS = { 'wet film': 'mil', 'Barcol hardness': 'Barcol', thickness: 'mm' } as const;

/** Readings of a layer: a film while it is wet, the rest the next morning; what is outside gets a concession that day. */
export const readLayer = (demo: Seeded, part: DemoPart, recipe: LayerRecipe, times: LayerTimes): readonly Draft[] =>
  (recipe.readings ?? []).flatMap((reading) => readKind(demo, part, recipe, reading, times));

const readKind = (
  demo: Seeded,
  part: DemoPart,
  recipe: LayerRecipe,
  reading: ReadingRecipe,
  { ended }: LayerTimes,
): readonly Draft[] => {
  const what = reading.what as keyof typeof UNITS;
  const night = part.hull.atNight && recipe.code === NIGHT_LAYER;
  const morning = instant(part.hull.startDay + dayOfLayer(part, recipe) + 1, night ? '17:00' : '06:35');
  const at = what === 'wet film' ? later(ended, 3) : later(morning, what === 'thickness' ? 12 : 0);
  const spots = Array.from({ length: reading.spots }, () => spotOf(part, reading));
  const name = `${layerStep(part, recipe)} ${what}`;
  const taken = draft(
    'readLayer',
    { name, at, by: part.hull.random.pick(INSPECTORS), of: demo.id(layerStep(part, recipe)) },
    { what, unit: UNITS[what], equipment: GAUGES[what], spots },
  );
  const outside = spots.flatMap((spot, i) => (isOutside(spot, reading, UNITS[what]) ? [i] : []));
  return [taken, ...outside.map((i) => concede(demo, part, recipe, { name, at, spot: i }))];
};

type Spot = ReturnType<typeof spotOf>;

/** A mil gauge has a step every 2 mil here (ASTM D4414-95(2020) 7.1.2): the last wet one is told, and the next. */
const spotOf = ({ hull, kind }: DemoPart, { what, mean, deviation }: ReadingRecipe) => {
  const value = hull.random.normal(mean, deviation);
  const place = somewhere(hull.model.skins[kind], hull.random);
  if (what !== 'wet film') return { value: value.toFixed(what === 'thickness' ? 2 : 0), place };
  const lastWet = 2 * Math.floor(value / 2);
  return { lastWet: String(lastWet), nextDry: String(lastWet + 2), place };
};

const isOutside = (spot: Spot, { limits }: ReadingRecipe, unit: (typeof UNITS)[keyof typeof UNITS]): boolean =>
  judgeSpot({ low: Number('value' in spot ? spot.value : spot.lastWet), unit }, limits).verdict === 'outside';

const concede = (
  demo: Seeded,
  { hull, tag }: DemoPart,
  { code }: LayerRecipe,
  { name, at, spot }: { readonly name: string; readonly at: string; readonly spot: number },
): Draft =>
  draft(
    'dispose',
    { name: `${name} spot ${spot + 1} conceded`, at: later(at, 95), by: QUALITY },
    {
      ...{ of: 'reading', about: demo.id(name, spot), disposition: 'use as is' },
      concession: `C-${hull.serial}-${code}${tag}-${name.endsWith('thickness') ? 'T' : ''}${spot + 1}`,
      reason: 'One spot a little outside; its neighbours are inside and the laminate sounds solid.',
    },
  );
