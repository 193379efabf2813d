import type { Taken } from '@hull-record/contracts';
import { amount } from './amounts.js';
import { kilogramsOf } from './materials.js';
import { deviceOf } from './people.js';
import type { Draft, Need, Seeded, Step } from './step.js';
import { PlannedStore } from './store.js';
import { PlannedTank, TANKS, type TankCode } from './tank.js';

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
  const supplied: Supplied[] = [];
  const resolve = (each: Draft): void => {
    const taken = each.needs.flatMap((need) => {
      if ('lot' in need) return [{ lot: need.lot, amount: need.amount }];
      if (need.tank === undefined) return fromStore(store, each, need);
      const times = { at: each.at, began: each.began ?? each.at };
      tanks.get(need.tank)?.draw(kilogramsOf(need.material, need.amount), times).forEach(resolve);
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
  if (each.act !== 'fillTank') return [{ lot: store.take(need.material, kg, each.at), amount: need.amount }];
  return store
    .takeSplit(need.material, kg, each.at)
    .map((portion) => ({ lot: portion.lot, amount: amount(portion.kg, 'kg') }));
};

const FIELD: Partial<Record<Draft['act'], 'used' | 'inputs'>> = {
  ...{ makeMix: 'inputs', cutKit: 'inputs', fillTank: 'inputs' },
  ...{ recordLayer: 'used', joinPart: 'used', recordRepair: 'used' },
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
