import fc from 'fast-check';
import { kg } from '../../shop.js';
import { iso } from '../plant.js';
import type { PlantModel } from '../plant-model.js';
import type { ModelHookUp } from '../model-facts.js';
import { kilograms, late, nth, pick, tellDraw, time, type Act } from './act.js';

export const fill = fc
  .record({ late, amount: kilograms, heel: kilograms, empty: fc.boolean(), n: nth })
  .map((how): Act => ({
    name: 'fill',
    run: async (plant, model) => {
      const at = plant.at(how.late);
      const lot = pick(model.lotsBy(at), how.n);
      if (lot === undefined) return;
      // Even and odd, so that heel and input are told apart by their kilograms.
      const [amount, heel] = [how.amount * 2, how.heel * 2 + 1];
      const heelKg = how.empty || model.times.inTank(at) === undefined ? null : heel;
      const code = plant.code('F');
      const id = await plant.record(`/api/tanks/${plant.name}-T/fills`, at, {
        code,
        heel: heelKg === null ? null : kg(heelKg),
        inputs: [plant.taken({ lot }, amount)],
      });
      model.lots.push({ code, kind: 'fill', at, heelKg });
      await tellDraw(plant, model, id, { table: 'lot_input', at, from: { lot }, kg: amount, into: code });
      model.story.push(`At ${time(at)} the tank was filled (${code}): heel ${heelKg}, ${amount} kg of ${lot}.`);
    },
  }));

export const withdrawFill = nth.map((n): Act => ({
  name: 'withdraw a fill',
  run: async (plant, model) => {
    const found = pick(model.fills, n);
    if (!found) return;
    await plant.correct('lot', await plant.lotRoot(found.code));
    model.forgetLot(found.code);
    model.story.push(`Fill ${found.code} never was.`);
  },
}));

/** Whether what went into a lot was there by then, and what was drawn of it by name came after: else time goes round. */
const fits = (model: PlantModel, code: string, at: number): boolean =>
  model.hookUps.every(({ to, at: hooked }) => !isOf(to, code) || hooked >= at) &&
  model.draws.every(({ from, into, ...draw }) => {
    if (into === code && 'lot' in from) return (model.lot(from.lot)?.at ?? Infinity) <= at;
    return !('lot' in from) || from.lot !== code || draw.at >= at;
  });

const isOf = (to: ModelHookUp['to'], code: string): boolean => to !== null && 'lot' in to && to.lot === code;

/** Sets right when a fill, bucket or kit was made: what went into it went into it then. */
export const moveMade = fc.record({ late, n: nth, fills: fc.boolean() }).map((how): Act => ({
  name: 'move what was made',
  run: async (plant, model) => {
    const all = model.lots.filter(({ kind }) => (how.fills ? kind === 'fill' : kind === 'bucket' || kind === 'kit'));
    const found = pick(all, how.n);
    const at = plant.at(how.late);
    if (!found || !fits(model, found.code, at)) return;
    await plant.correct('lot', await plant.lotRoot(found.code), { kind: 'lot', happenedAt: iso(at) });
    model.story.push(`${found.code} of ${time(found.at)} was made at ${time(at)}.`);
    found.at = at;
    for (const draw of model.draws) if (draw.into === found.code) draw.at = at;
  },
}));

export const hookUp = fc
  .record({ late, to: fc.constantFrom('lot', 'lot', 'tank', 'tank', 'nothing'), n: nth })
  .map((how): Act => ({
    name: 'hook up',
    run: async (plant, model) => {
      const at = plant.at(how.late);
      const lot = pick(model.lotsBy(at), how.n);
      const to = how.to === 'tank' ? ({ tank: true } as const) : how.to === 'lot' && lot !== undefined ? { lot } : null;
      const feeds = to === null ? {} : 'lot' in to ? to : { tank: `${plant.name}-T` };
      const id = await plant.record(`/api/guns/${plant.name}-G/hook-ups`, at, { feed: 'resin', ...feeds });
      model.hookUps.push({ id, at, to });
      model.story.push(`At ${time(at)} the gun was hooked up to ${JSON.stringify(feeds)}.`);
    },
  }));

export const moveHookUp = fc.record({ late, n: nth }).map((how): Act => ({
  name: 'move a hook-up',
  run: async (plant, model) => {
    const found = pick(model.hookUps, how.n);
    const at = plant.at(how.late);
    if (!found || model.lots.some((lot) => isOf(found.to, lot.code) && lot.at > at)) return;
    await plant.correct('hook_up', found.id, { kind: 'hook-up', happenedAt: iso(at) });
    model.story.push(`The hook-up of ${time(found.at)} was at ${time(at)}.`);
    found.at = at;
  },
}));

export const withdrawHookUp = nth.map((n): Act => ({
  name: 'withdraw a hook-up',
  run: async (plant, model) => {
    const found = pick(model.hookUps, n);
    if (!found) return;
    await plant.correct('hook_up', found.id);
    model.hookUps = model.hookUps.filter((each) => each !== found);
    model.story.push(`The gun was not hooked up at ${time(found.at)}.`);
  },
}));
