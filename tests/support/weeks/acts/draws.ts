import fc from 'fast-check';
import { kg } from '../../shop.js';
import { iso } from '../plant.js';
import type { PlantModel } from '../plant-model.js';
import type { ModelDraw } from '../model-facts.js';
import { kilograms, late, named, nth, pick, time, type Act } from './act.js';

const told = (draw: ModelDraw, model: PlantModel): string => {
  const place = model.places.find(({ id }) => id === draw.into);
  const into = place ? `${place.layer ?? place.kind} of ${place.part}` : draw.into;
  return `What was drawn of ${named(draw.from)} at ${time(draw.at)} for ${into}`;
};

export const weighAgain = fc.record({ amount: kilograms, n: nth }).map((how): Act => ({
  name: 'weigh again',
  run: async (plant, model) => {
    const found = pick(model.draws, how.n);
    if (!found) return;
    const kind = found.table === 'used' ? 'used' : 'lot input';
    await plant.correct(found.table, found.root, { kind, amount: kg(how.amount) });
    model.story.push(`${told(found, model)} was ${how.amount} kg, not ${found.kg}.`);
    found.kg = how.amount;
  },
}));

/** It was another lot: of those that were there by then. */
export const nameAnother = fc.record({ n: nth, lot: nth }).map((how): Act => ({
  name: 'name another lot',
  run: async (plant, model) => {
    const found = pick(model.draws, how.n);
    const lot = found && pick(model.lotsBy(found.at), how.lot);
    if (!found || lot === undefined || lot === found.into) return;
    const set = found.table === 'used' ? { kind: 'used', lot } : { kind: 'lot input', input: lot };
    await plant.correct(found.table, found.root, set);
    model.story.push(`${told(found, model)} was ${lot}.`);
    found.from = { lot };
  },
}));

export const withdrawUse = nth.map((n): Act => ({
  name: 'withdraw a use',
  run: async (plant, model) => {
    const found = pick(
      model.draws.filter(({ table }) => table === 'used'),
      n,
    );
    if (!found) return;
    await plant.correct('used', found.root);
    model.story.push(`${told(found, model)} never was.`);
    model.draws = model.draws.filter((each) => each !== found);
  },
}));

/** It went into another place. */
export const moveUse = fc.record({ n: nth, where: nth }).map((how): Act => ({
  name: 'move a use to another place',
  run: async (plant, model) => {
    const found = pick(
      model.draws.filter(({ table }) => table === 'used'),
      how.n,
    );
    const place = pick(model.places, how.where);
    if (!found || !place) return;
    await plant.correct('used', found.root, { kind: 'used', into: place.id });
    model.story.push(`${told(found, model)} went into ${place.layer ?? place.kind} of ${place.part}.`);
    found.into = place.id;
  },
}));

/** It was drawn at another time; of what the tank held, or what fed the gun, then. */
export const drawAtAnotherTime = fc.record({ late, n: nth }).map((how): Act => ({
  name: 'draw at another time',
  run: async (plant, model) => {
    const found = pick(
      model.draws.filter(({ table }) => table === 'used'),
      how.n,
    );
    const at = plant.at(how.late);
    if (!found || ('lot' in found.from && (model.lot(found.from.lot)?.at ?? Infinity) > at)) return;
    await plant.correct('used', found.root, { kind: 'used', happenedAt: iso(at) });
    model.story.push(`${told(found, model)} was drawn at ${time(at)}.`);
    found.at = at;
  },
}));
