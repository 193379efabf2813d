import fc from 'fast-check';
import { kg } from '../shop.js';
import type { PlantModel, Source } from './plant-model.js';
import type { Plant } from './plant.js';

/** One act of a week: done on the real plant and told to the model. An act that cannot be done does nothing. */
export interface Act {
  readonly name: string;
  run(plant: Plant, model: PlantModel): Promise<void>;
}

const late = fc.oneof(
  { weight: 3, arbitrary: fc.constant(0) },
  { weight: 2, arbitrary: fc.integer({ min: 1, max: 90 }) },
);
const kilograms = fc.integer({ min: 1, max: 200 });
const nth = fc.nat({ max: 1_000 });

const pick = <T>(all: readonly T[], n: number): T | undefined => all[n % Math.max(1, all.length)];
const time = (at: number): string => new Date(at).toISOString().slice(5, 19);

const receive = fc.record({ amount: kilograms }).map(({ amount }): Act => ({
  name: 'receive',
  run: async (plant, model) => {
    const code = plant.code('R');
    await plant.shop.receive(code, 'RES-VE', { amount: kg(amount * 10), happenedAt: '2026-03-01T00:00:00Z' });
    model.received.set(code, amount * 10);
    model.story.push(`${code} came with ${amount * 10} kg.`);
  },
}));

const fill = fc.record({ late, amount: kilograms, heel: kilograms, empty: fc.boolean(), n: nth }).map((how): Act => ({
  name: 'fill',
  run: async (plant, model) => {
    const inputLot = pick(model.lots, how.n);
    if (inputLot === undefined) return;
    const at = plant.at(how.late);
    const heelKg = how.empty || model.inTank(at) === undefined ? null : how.heel;
    const code = plant.code('F');
    const inputs = [{ lot: inputLot, amount: kg(how.amount) }];
    const id = await plant.record(`/api/tanks/${plant.name}-T/fills`, at, {
      code,
      heel: heelKg === null ? null : kg(heelKg),
      inputs,
    });
    model.fills.push({ code, id, at, heelKg, inputLot, inputKg: how.amount });
    model.story.push(`At ${time(at)} the tank was filled (${code}): heel ${heelKg}, ${how.amount} kg of ${inputLot}.`);
  },
}));

const hookUp = fc
  .record({ late, to: fc.constantFrom('lot', 'lot', 'tank', 'tank', 'nothing'), n: nth })
  .map((how): Act => ({
    name: 'hook up',
    run: async (plant, model) => {
      const lot = pick(model.lots, how.n);
      const to = how.to === 'tank' ? ({ tank: true } as const) : how.to === 'lot' && lot !== undefined ? { lot } : null;
      const at = plant.at(how.late);
      const named = to === null ? {} : 'lot' in to ? to : { tank: `${plant.name}-T` };
      const id = await plant.record(`/api/guns/${plant.name}-G/hook-ups`, at, { feed: 'resin', ...named });
      model.hookUps.push({ id, at, to });
      model.story.push(`At ${time(at)} the gun was hooked up to ${JSON.stringify(named)}.`);
    },
  }));

const draw = fc
  .record({ late, amount: kilograms, of: fc.constantFrom('lot', 'tank', 'gun', 'gun'), n: nth })
  .map((how): Act => ({
    name: 'draw',
    run: async (plant, model) => {
      const lot = pick(model.lots, how.n);
      const from: Source | undefined =
        how.of === 'tank' ? { tank: true } : how.of === 'gun' ? { gun: true } : lot === undefined ? undefined : { lot };
      if (from === undefined) return;
      const at = plant.at(how.late);
      model.draws.push({ root: await plant.draw(from, how.amount, at), at, from, kg: how.amount });
      model.story.push(`At ${time(at)} ${how.amount} kg were drawn from ${JSON.stringify(from)}.`);
    },
  }));

const lose = fc.record({ late, amount: kilograms, n: nth }).map((how): Act => ({
  name: 'lose',
  run: async (plant, model) => {
    const lot = pick(model.lots, how.n);
    if (lot === undefined) return;
    const at = plant.at(how.late);
    await plant.record(`/api/lots/${lot}/losses`, at, { what: 'spilled', reason: 'a week', amount: kg(how.amount) });
    model.losses.push({ lot, at, kg: how.amount });
    model.story.push(`At ${time(at)} ${how.amount} kg of ${lot} were spilled.`);
  },
}));

const count = fc.record({ late, amount: fc.integer({ min: 0, max: 900 }), n: nth }).map((how): Act => ({
  name: 'count',
  run: async (plant, model) => {
    const lot = pick(model.lots, how.n);
    if (lot === undefined) return;
    const at = plant.at(how.late);
    await plant.record(`/api/lots/${lot}/counts`, at, { quantity: how.amount, unit: 'kg' });
    model.counts.push({ lot, at, kg: how.amount });
    model.story.push(`At ${time(at)} ${how.amount} kg of ${lot} were counted.`);
  },
}));

const weighAgain = fc.record({ amount: kilograms, n: nth }).map((how): Act => ({
  name: 'weigh again',
  run: async (plant, model) => {
    const found = pick(model.draws, how.n);
    if (!found) return;
    await plant.shop.correct((await plant.standing(found.root)).id, { kind: 'used', amount: kg(how.amount) });
    found.kg = how.amount;
    model.story.push(`What was drawn at ${time(found.at)} was ${how.amount} kg.`);
  },
}));

const withdrawDraw = nth.map((n): Act => ({
  name: 'withdraw a draw',
  run: async (plant, model) => {
    const found = pick(model.draws, n);
    if (!found) return;
    await plant.shop.correct((await plant.standing(found.root)).id);
    model.draws = model.draws.filter((each) => each !== found);
    model.story.push(`Nothing was drawn at ${time(found.at)}.`);
  },
}));

const withdrawFill = nth.map((n): Act => ({
  name: 'withdraw a fill',
  run: async (plant, model) => {
    const found = pick(model.fills, n);
    if (!found) return;
    const [standing] = await plant.service.asOwner<{ id: string }>(
      'select l.id from fact.lot l where l.root = $1 and not exists (select from fact.correction c where c.corrects = l.id)',
      [found.id],
    );
    await plant.shop.correct(String(standing?.id));
    model.fills = model.fills.filter((each) => each !== found);
    model.story.push(`Fill ${found.code} never was.`);
  },
}));

const moveHookUp = fc.record({ late, n: nth }).map((how): Act => ({
  name: 'move a hook-up',
  run: async (plant, model) => {
    const found = pick(model.hookUps, how.n);
    if (!found) return;
    const at = plant.at(how.late);
    found.id = await plant.shop.correct(found.id, { kind: 'hook-up', happenedAt: new Date(at).toISOString() });
    model.story.push(`The hook-up of ${time(found.at)} was at ${time(at)}.`);
    found.at = at;
  },
}));

/** A week: a lot to begin with, and acts of every kind. */
export const week = (acts: number): fc.Arbitrary<readonly Act[]> =>
  fc
    .tuple(
      receive,
      fc.array(
        fc.oneof(
          { weight: 1, arbitrary: receive },
          { weight: 3, arbitrary: fill },
          { weight: 4, arbitrary: hookUp },
          { weight: 9, arbitrary: draw },
          { weight: 1, arbitrary: lose },
          { weight: 1, arbitrary: count },
          { weight: 1, arbitrary: weighAgain },
          { weight: 1, arbitrary: withdrawDraw },
          { weight: 1, arbitrary: withdrawFill },
          { weight: 1, arbitrary: moveHookUp },
        ),
        { minLength: Math.ceil(acts / 2), maxLength: acts, size: 'max' },
      ),
    )
    .map(([first, rest]) => [first, ...rest]);
