import { amount } from './amounts.js';
import { defectsOf } from './defects.js';
import { lifeOf } from './life.js';
import { layerStep, makeLayer, timesOf, type LayerTimes } from './make-layer.js';
import type { PartKind } from './models.js';
import { partOf, type DemoHull, type DemoPart } from './parts.js';
import { INSPECTORS, LEAD } from './people.js';
import { readLayer } from './read-layer.js';
import type { LayerRecipe } from './recipe.js';
import { RECIPES } from './recipes.js';
import { draft, type Draft, type Seeded } from './step.js';
import { instant, later } from './working-days.js';

/** All that happens to one hull until it stands at its dealer. */
export const buildHull = (demo: Seeded, hull: DemoHull): readonly Draft[] => {
  const molding = partOf(hull, 'hull molding');
  return [
    startHull(molding),
    ...partLayers(demo, molding),
    ...otherPart(demo, hull, 'stringer grid', { day: 8, material: 'PST-G', kgPerM2: 0.75 }),
    ...otherPart(demo, hull, 'deck', { day: 11, material: 'PST-D', kgPerM2: 0.32 }),
    ...defectsOf(demo, molding),
    ...lifeOf(hull),
  ];
};

const startHull = ({ hull, mold }: DemoPart): Draft =>
  draft(
    'startHull',
    { name: `hull ${hull.number}`, at: instant(hull.startDay, '06:50'), by: LEAD },
    { number: hull.number, model: hull.model.code, mold },
  );

const partLayers = (demo: Seeded, part: DemoPart): readonly Draft[] =>
  RECIPES[part.kind].flatMap((recipe) => {
    const times = timesOf(part, recipe);
    return [
      ...makeLayer(part, recipe, times),
      ...readLayer(demo, part, recipe, times),
      ...signature(demo, part, recipe, times),
    ];
  });

/** Wet gel coat is signed at once, a laminate the next morning when it was read and tapped. */
const signature = (demo: Seeded, part: DemoPart, recipe: LayerRecipe, { ended }: LayerTimes): readonly Draft[] => {
  if (recipe.holdPoint === undefined) return [];
  const next = later(instant(part.hull.startDay + recipe.day + 1, '10:05'), part.hull.random.whole(0, 15));
  const step = layerStep(part, recipe);
  const at = recipe.code.endsWith('1') ? later(ended, 25) : next;
  return [
    draft(
      'signHoldPoint',
      { name: `${step} signed`, at, by: part.hull.random.pick(INSPECTORS), of: demo.id(step) },
      {},
    ),
  ];
};

interface Joining {
  readonly day: number;
  readonly material: 'PST-G' | 'PST-D';
  readonly kgPerM2: number;
}

/** Starts, laminates and joins a part that comes from a mold of its own. */
const otherPart = (demo: Seeded, hull: DemoHull, kind: Exclude<PartKind, 'hull molding'>, joining: Joining) => {
  const part = partOf(hull, kind);
  const day = hull.startDay + (RECIPES[kind][0]?.day ?? 0);
  const kg = part.area * joining.kgPerM2 * hull.random.normal(1, 0.05);
  return [
    draft(
      'startPart',
      { name: `part ${part.number}`, at: instant(day, '06:55'), by: LEAD },
      { number: part.number, kind, model: hull.model.code, mold: part.mold },
    ),
    ...partLayers(demo, part),
    draft(
      'joinPart',
      {
        name: `part ${part.number} joined`,
        at: instant(hull.startDay + joining.day, '14:10'),
        by: LEAD,
        of: hull.number,
      },
      { part: part.number, doneBy: ['LAM-02', 'LAM-05'] },
      [{ material: joining.material, amount: amount(kg, 'kg') }],
    ),
  ];
};
