import fc from 'fast-check';
import { kg } from '../../shop.js';
import { BEGIN, iso } from '../plant.js';
import { kilograms, late, nth, pick, time, type Act } from './act.js';

const MATERIALS = { resin: 'RES-VE', catalyst: 'MEKP', glass: 'MAT-450' } as const;

const roles = fc.constantFrom('resin' as const, 'resin' as const, 'catalyst' as const, 'glass' as const);

export const receive = fc.record({ amount: kilograms, role: roles }).map(({ amount, role }): Act => ({
  name: 'receive',
  run: async (plant, model) => {
    const code = plant.code('R');
    await plant.shop.receive(code, MATERIALS[role], { amount: kg(amount * 10), happenedAt: iso(BEGIN) });
    model.lots.push({ code, role, kind: 'received', kg: amount * 10, at: BEGIN });
    model.story.push(`${code} came with ${amount * 10} kg of ${role}.`);
  },
}));

export const lose = fc.record({ late, amount: kilograms, n: nth }).map((how): Act => ({
  name: 'lose',
  run: async (plant, model) => {
    const at = plant.at(how.late);
    const lot = pick(model.lotsBy(at), how.n);
    if (lot === undefined) return;
    await plant.record(`/api/lots/${lot}/losses`, at, { what: 'spilled', reason: 'a week', amount: kg(how.amount) });
    model.losses.push({ lot, at, kg: how.amount });
    model.story.push(`At ${time(at)} ${how.amount} kg of ${lot} were spilled.`);
  },
}));

export const count = fc.record({ late, amount: fc.integer({ min: 0, max: 900 }), n: nth }).map((how): Act => ({
  name: 'count',
  run: async (plant, model) => {
    const at = plant.at(how.late);
    const lot = pick(model.lotsBy(at), how.n);
    if (lot === undefined) return;
    await plant.record(`/api/lots/${lot}/counts`, at, { quantity: how.amount, unit: 'kg' });
    model.counts.push({ lot, at, kg: how.amount });
    model.story.push(`At ${time(at)} ${how.amount} kg of ${lot} were counted.`);
  },
}));

export const changeState = fc
  .record({ late, n: nth, state: fc.constantFrom('held', 'rejected', 'released', 'released') })
  .map(({ late: minutes, n, state }): Act => ({
    name: 'change the state',
    run: async (plant, model) => {
      const at = plant.at(minutes);
      const lot = pick(model.lotsBy(at), n);
      if (lot === undefined) return;
      await plant.record(`/api/lots/${lot}/states`, at, { state, reason: 'a week' });
      model.states.push({ lot, at, state });
      model.story.push(`From ${time(at)} on ${lot} was ${state}.`);
    },
  }));

/** A lot that something names cannot be withdrawn; a made one takes its inputs with it. */
export const withdrawLot = nth.map((n): Act => ({
  name: 'withdraw a lot',
  run: async (plant, model) => {
    const lot = pick(
      model.lots.filter(({ kind }) => kind !== 'fill'),
      n,
    );
    // A gun that is hooked up to it would feed nothing that is known; that is another story.
    if (!lot || model.hookUps.some(({ to }) => to !== null && 'lot' in to && to.lot === lot.code)) return;
    const { refused } = await plant.correct('lot', await plant.lotRoot(lot.code));
    if (model.isNamed(lot.code) !== (refused === 'lot-is-used'))
      throw new Error(
        `${lot.code} withdrawn: ${refused ?? 'yes'}, although it ${model.isNamed(lot.code) ? 'was' : 'was not'} used.`,
      );
    if (refused !== undefined) return;
    model.forgetLot(lot.code);
    model.story.push(`${lot.code} never was.`);
  },
}));
