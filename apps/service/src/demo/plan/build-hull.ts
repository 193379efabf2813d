import { amount } from './amounts.js';
import { defectsOf } from './defects.js';
import { lifeOf } from './life.js';
import { layerStep, makeLayer, timesOf, type LayerTimes } from './make-layer.js';
import type { PartKind } from './models.js';
import { behind, dayOfLayer, NIGHT_LAYER, partOf, remade, type DemoHull, type DemoPart } from './parts.js';
import { INSPECTORS, LEAD, QUALITY } from './people.js';
import { readLayer } from './read-layer.js';
import type { LayerRecipe } from './recipe.js';
import { RECIPES } from './recipes.js';
import { draft, type Draft, type Seeded } from './step.js';
import { touchUpsOf } from './touch-ups.js';
import { instant, later } from './working-days.js';

/** All that happens to one hull until it stands at its dealer. */
export const buildHull = (demo: Seeded, hull: DemoHull): readonly Draft[] => {
  const molding = partOf(hull, 'hull molding');
  return [
    startHull(molding),
    ...moldCare(molding),
    ...partLayers(demo, molding),
    ...otherPart(demo, partOf(hull, 'stringer grid'), { day: 8, material: 'PST-G', kgPerM2: 0.75 }),
    ...deck(demo, partOf(hull, 'deck')),
    ...defectsOf(demo, molding),
    ...touchUpsOf(demo, molding),
    ...lifeOf(hull),
  ];
};

const startHull = ({ hull, mold }: DemoPart): Draft =>
  draft(
    'startHull',
    { name: `hull ${hull.number}`, at: instant(hull.startDay, '06:50'), by: LEAD },
    { number: hull.number, model: hull.model.code, mold },
  );

/** Every third pull of a mold is waxed before the next gel coat. */
const moldCare = ({ hull, mold }: DemoPart): readonly Draft[] =>
  hull.index % 9 > 2
    ? []
    : [
        draft(
          'careForMold',
          { name: `mold ${mold} for ${hull.number}`, at: instant(hull.startDay, '06:20'), by: LEAD, of: mold },
          { what: 'waxed', doneBy: ['LAM-06'], duePulls: 4 },
          [{ material: 'REL-W', amount: amount(0.15, 'kg') }],
        ),
      ];

const DECK: Joining = { day: 11, material: 'PST-D', kgPerM2: 0.32 };

/** A deck; one of the demo is scrapped after its skin coat and made again. */
const deck = (demo: Seeded, part: DemoPart): readonly Draft[] => {
  if (!part.hull.deckRemade) return otherPart(demo, part, DECK);
  const begun = otherPart(demo, part, DECK).filter(({ name }) => !/ D[34]|joined/.test(name));
  const scrapped = draft(
    'scrapPart',
    {
      name: `part ${part.number} scrapped`,
      at: instant(part.hull.startDay + 4, '08:10'),
      by: QUALITY,
      of: part.number,
    },
    { reason: 'The gel coat let go of the mold over half of the deck while it cured.' },
  );
  return [...begun, scrapped, ...otherPart(demo, remade(part), DECK)];
};

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
  const night = part.hull.atNight && recipe.code === NIGHT_LAYER;
  const morning = instant(part.hull.startDay + dayOfLayer(part, recipe) + 1, night ? '17:40' : '10:05');
  const next = later(morning, part.hull.random.whole(0, 15));
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
const otherPart = (demo: Seeded, part: DemoPart, joining: Joining): readonly Draft[] => {
  const { hull } = part;
  const kind = part.kind as Exclude<PartKind, 'hull molding'>;
  const day = hull.startDay + part.late + (RECIPES[kind][0]?.day ?? 0);
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
        at: instant(hull.startDay + joining.day + behind(hull), '14:10'),
        by: LEAD,
        of: hull.number,
      },
      { part: part.number, doneBy: ['LAM-02', 'LAM-05'] },
      [{ material: joining.material, amount: amount(kg, 'kg') }],
    ),
  ];
};
