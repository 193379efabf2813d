import type { Taken } from '@hull-record/contracts';
import { amount } from './amounts.js';
import { kilogramsOf } from './materials.js';
import { GUNS, type GunCode } from './guns.js';
import { deviceOf } from './people.js';
import { PlannedGun } from './planned-gun.js';
import type { Draft, Need, Seeded, Step } from './step.js';
import { PlannedStore } from './store.js';
import { PlannedTank } from './planned-tank.js';
import { TANKS, type TankCode } from './tanks.js';

/** Puts what happens in order of time; what happens at once stays in the order given. */
export const inOrder = <T extends { readonly at: string }>(all: readonly T[]): readonly T[] =>
  all
    .map((each, i) => ({ each, i }))
    .sort(byTime)
    .map(({ each }) => each);

const byTime = (
  a: { readonly each: { readonly at: string }; readonly i: number },
  b: { readonly each: { readonly at: string }; readonly i: number },
): number => (a.each.at < b.each.at ? -1 : a.each.at > b.each.at ? 1 : a.i - b.i);

/** A draft whose material is known by lot. */
export interface Supplied extends Draft {
  readonly taken: readonly Taken[];
}

/**
 * Says of which lot everything comes: walks through the days, lets stocks run down, fills tanks and receives lots.
 *
 * @returns all drafts and those added, in order of time
 */
export const supply = (demo: Seeded, drafts: readonly Draft[]): readonly Supplied[] => {
  const store = new PlannedStore(demo);
  const tanks = new Map(
    (Object.keys(TANKS) as TankCode[]).map((code) => [code as string, new PlannedTank(code, demo.random(code))]),
  );
  const guns = new Map((Object.keys(GUNS) as GunCode[]).map((code) => [code, new PlannedGun(code)]));
  const supplied: Supplied[] = [];
  const drawTank = (tank: string, kg: number, each: Draft): void =>
    tanks
      .get(tank)
      ?.draw(kg, { at: each.at, began: each.began ?? each.at })
      .forEach(resolve);
  const spray = (code: GunCode, kg: number, each: Draft): void => {
    const gun = guns.get(code) as PlannedGun;
    for (const part of gun.partsOf(kg)) {
      const tank = part.feed === 'resin' ? gun.tank : undefined;
      if (tank !== undefined) drawTank(tank, part.kg, each);
      const to = tank === undefined ? { lot: store.take(part.material, part.kg, each.at) } : { tank };
      gun.hookUp(part.feed, to, each.began ?? each.at).forEach(resolve);
    }
    gun.usedAt = each.at;
  };
  const resolve = (each: Draft): void => {
    const taken = each.needs.flatMap((need): readonly Taken[] => {
      if ('lot' in need) return [{ lot: need.lot, amount: need.amount }];
      if ('unidentified' in need) return [{ unidentified: { likely: [], ...need.unidentified }, amount: need.amount }];
      if (need.gun !== undefined) {
        spray(need.gun, Number(need.amount.quantity), each);
        return [{ gun: need.gun, amount: need.amount }];
      }
      if (need.tank === undefined) return fromStore(store, each, need);
      drawTank(need.tank, kilogramsOf(need.material, need.amount), each);
      return [{ tank: need.tank, amount: need.amount }];
    });
    supplied.push({ ...each, taken });
  };
  inOrder(drafts).forEach(resolve);
  return inOrder([...store.received.map((each) => ({ ...each, taken: [] })), ...supplied]);
};

type FromStore = Extract<Need, { readonly material: unknown }>;

const fromStore = (store: PlannedStore, each: Draft, need: FromStore): readonly Taken[] => {
  const kg = kilogramsOf(need.material, need.amount);
  if (need.setAside === true) return [{ lot: store.takeSetAside(need.material, kg, each.at), amount: need.amount }];
  if (each.act !== 'fillTank') return [{ lot: store.take(need.material, kg, each.at), amount: need.amount }];
  return store
    .takeSplit(need.material, kg, each.at)
    .map((portion) => ({ lot: portion.lot, amount: amount(portion.kg, 'kg') }));
};

const FIELD: Partial<Record<Draft['act'], 'used' | 'inputs'>> = {
  ...{ makeMix: 'inputs', cutKit: 'inputs', fillTank: 'inputs' },
  ...{ recordLayer: 'used', joinPart: 'used', recordRepair: 'used', recordTouchUp: 'used', careForMold: 'used' },
};

/** The call that a supplied draft makes. */
export const toStep = (demo: Seeded, { act, name, at, by, of, body, taken }: Supplied): Step => {
  const field = FIELD[act];
  const envelope = { id: demo.id(name), enteredBy: by, device: deviceOf(by), happenedAt: at };
  return {
    ...{ act, name, body: { ...envelope, ...body, ...(field === undefined ? {} : { [field]: taken }) } },
    ...(of === undefined ? {} : { of }),
  };
};
