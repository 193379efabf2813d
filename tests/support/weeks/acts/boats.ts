import fc from 'fast-check';
import { BEGIN, iso } from '../plant.js';
import type { ModelPlace } from '../model-facts.js';
import { kilograms, late, named, nth, pick, source, sourceOf, tellDraw, time, type Act } from './act.js';

const LAYERS = [
  ['-H', 'L2'],
  ['-H', 'L3'],
  ['DECK', 'D1'],
] as const;

/** A layer of a part, a joint, a repair or a touch-up, with the first that was used in it. */
const begin = (kind: ModelPlace['kind']) =>
  fc.record({ late, of: source, amount: kilograms, n: nth, where: nth }).map((how): Act => ({
    name: kind,
    run: async (plant, model) => {
      const at = plant.at(how.late);
      const from = sourceOf(model, { of: how.of, n: how.n, at });
      const free = LAYERS.flatMap(([of, layer]) =>
        plant.parts.flatMap((part) =>
          part.includes(of) && !model.places.some((place) => place.part === part && place.layer === layer)
            ? [{ part, layer }]
            : [],
        ),
      );
      const unjoined = plant.decks.filter((deck) => !model.hullOf.has(deck)).map((part) => ({ part }));
      const everyPart = plant.parts.map((part) => ({ part }));
      const where = pick<{ part: string; layer?: string }>(
        kind === 'layer' ? free : kind === 'joint' ? unjoined : everyPart,
        how.where,
      );
      if (!where || !from) return;
      const { part, layer } = where;
      const hull = pick(plant.hulls, how.n) as string;
      const used = [plant.taken(from, how.amount)];
      const crew = { doneBy: ['LAM-1'], used };
      const id = await {
        layer: () =>
          plant.record(`/api/parts/${part}/layers`, at, { layer, startedAt: iso(at), endedAt: iso(at), ...crew }),
        joint: () => plant.record(`/api/hulls/${hull}/joints`, at, { part, ...crew }),
        repair: async () => {
          const defects = [await plant.defect(part, at)];
          return plant.record(`/api/parts/${part}/repairs`, at, { defects, procedure: 'Laid up again.', ...crew });
        },
        'touch-up': () => plant.record(`/api/parts/${part}/touch-ups`, at, { spots: SPOTS, ...crew }),
      }[kind]();
      const times = { startedAt: at, endedAt: at };
      model.places.push({ id, kind, part, ...(layer === undefined ? {} : { layer }), ...times });
      if (kind === 'joint') model.hullOf.set(part, hull);
      await tellDraw(plant, model, id, { table: 'used', at, from, kg: how.amount, into: id });
      const what = `${layer ?? kind} of ${part}${kind === 'joint' ? ` to ${hull}` : ''}`;
      model.story.push(`At ${time(at)} ${what} was made with ${how.amount} kg of ${named(from)}.`);
    },
  }));

const SPOTS = [{ zone: 'port topside', kind: 'pit', count: 1, largestMm: 2 }];

export const [makeLayer, join, repair, touchUp] = (['layer', 'joint', 'repair', 'touch-up'] as const).map(begin) as [
  ReturnType<typeof begin>,
  ReturnType<typeof begin>,
  ReturnType<typeof begin>,
  ReturnType<typeof begin>,
];

/** Something more is used in a place. */
export const use = fc.record({ late, of: source, amount: kilograms, n: nth, where: nth }).map((how): Act => ({
  name: 'use',
  run: async (plant, model) => {
    const at = plant.at(how.late);
    const from = sourceOf(model, { of: how.of, n: how.n, at });
    const place = pick(
      model.places.filter((each) => each.kind !== 'touch-up'),
      how.where,
    );
    if (!place || !from) return;
    const id = await plant.record(`${plant.pathOf(place)}/used`, at, { used: [plant.taken(from, how.amount)] });
    await tellDraw(plant, model, id, { table: 'used', at, from, kg: how.amount, into: place.id });
    model.story.push(
      `At ${time(at)} ${how.amount} kg of ${named(from)} went into ${place.layer ?? place.kind} of ${place.part}.`,
    );
  },
}));

const TABLES = { layer: 'layer_record', joint: 'joint', repair: 'repair', 'touch-up': 'touch_up' } as const;

/** A layer, repair or touch-up that was never made used nothing; a part whose joint is withdrawn is in no hull. */
export const withdrawPlace = nth.map((n): Act => ({
  name: 'withdraw a place',
  run: async (plant, model) => {
    const place = pick(model.places, n);
    if (!place) return;
    const { refused } = await plant.correct(TABLES[place.kind], place.id);
    if (refused !== undefined) throw new Error(`A ${place.kind} cannot be withdrawn: ${refused}.`);
    model.forgetPlace(place);
    model.story.push(`The ${place.layer ?? place.kind} of ${place.part} never was.`);
  },
}));

/** What was used in a layer was used while it was made: what lies outside its times moves to its end. */
export const moveLayer = fc.record({ late, hours: fc.integer({ min: 0, max: 3 }), n: nth }).map((how): Act => ({
  name: 'move a layer',
  run: async (plant, model) => {
    const place = pick(
      model.places.filter(({ kind }) => kind === 'layer'),
      how.n,
    );
    if (!place) return;
    const endedAt = plant.at(how.late);
    const startedAt = Math.max(BEGIN, endedAt - how.hours * 3_600_000);
    await plant.correct('layer_record', place.id, {
      ...{ kind: 'layer record', startedAt: iso(startedAt), endedAt: iso(endedAt) },
    });
    model.story.push(`${place.layer} of ${place.part} was made from ${time(startedAt)} to ${time(endedAt)}.`);
    model.places = model.places.map((each) => (each === place ? { ...place, startedAt, endedAt } : each));
    if (place.startedAt === startedAt && place.endedAt === endedAt) return;
    for (const draw of model.draws)
      if (draw.into === place.id && (draw.at < startedAt || draw.at > endedAt)) draw.at = endedAt;
  },
}));
