import { describe, expect, it } from '@jest/globals';
import {
  FLOOR,
  fractionsDownstream,
  lotsUpstream,
  membersDownstream,
  mixComposition,
  receivedComposition,
  resolveComposition,
} from '@hull-record/genealogy';
import type { Composition } from '@hull-record/genealogy';
import fc from 'fast-check';
import { randomGenealogy, tankChain } from '../../support/random-genealogy.js';
import type { InventedGenealogy } from '../../support/random-genealogy.js';
import { toNumber, walkComposition, walkHullsWith, walkLotsIn } from '../../support/walk/index.js';
import { graphOf, inputsOf } from './graph-of.js';

/** Relative tolerance of a fraction against the exact one: rounding of doubles over hundreds of lots stays far below. */
const RELATIVE = 1e-9;

const close = (found: number, exact: number): void =>
  expect(Math.abs(found - exact)).toBeLessThanOrEqual(RELATIVE * Math.abs(exact));

const total = (composition: Composition): number => composition.reduce((sum, { fraction }) => sum + fraction, 0);

const compositions = (plant: InventedGenealogy): ReadonlyMap<string, Composition> => {
  const lots = graphOf(plant);
  return new Map(plant.lots.map(({ id }) => [id, resolveComposition(id, lots)]));
};

/** Same set above the floor and same fractions; within the tolerance of the floor itself either answer is right. */
const agreesWithWalk = (lot: string, composition: Composition, plant: InventedGenealogy): void => {
  const found = new Map(composition.map(({ source, fraction }) => [source, fraction]));
  let below = 0;
  for (const [source, exact] of walkComposition(lot, plant)) {
    const fraction = toNumber(exact);
    const kept = found.get(source);
    if (kept === undefined) below += fraction;
    if (kept === undefined) expect(fraction).toBeLessThan(FLOOR * (1 + RELATIVE));
    else expect(fraction).toBeGreaterThanOrEqual(FLOOR * (1 - RELATIVE));
    if (kept !== undefined) close(kept, fraction);
    found.delete(source);
  }
  expect([...found.keys()].filter((source) => source !== null)).toEqual([]);
  const remainder = composition.filter(({ source }) => source === null);
  expect(Math.abs(total(remainder) - below)).toBeLessThanOrEqual(1e-12);
};

describe('in any plant', () => {
  it('the fractions of every lot sum to 1 within 1e-12', () => {
    fc.assert(
      fc.property(randomGenealogy(), (plant) => {
        for (const composition of compositions(plant).values())
          expect(Math.abs(total(composition) - 1)).toBeLessThanOrEqual(1e-12);
      }),
    );
  });

  it('the walk gives the same sources above the floor, with the same fractions', () => {
    fc.assert(
      fc.property(randomGenealogy(), (plant) => {
        for (const [lot, composition] of compositions(plant)) agreesWithWalk(lot, composition, plant);
      }),
      { numRuns: 40 },
    );
  });

  it('forward and backward agree: what a lot is downstream is what its composition says upstream', () => {
    fc.assert(
      fc.property(randomGenealogy(), (plant) => {
        const backward = compositions(plant);
        for (const { id: source } of plant.lots.filter(({ received }) => received)) {
          const forward = fractionsDownstream(source, graphOf(plant), FLOOR * (1 + RELATIVE));
          for (const [lot, fraction] of forward) {
            close(backward.get(lot)?.find((portion) => portion.source === source)?.fraction ?? 0, fraction);
          }
          const holders = [...backward].filter(([, all]) =>
            all.some((each) => each.source === source && each.fraction > FLOOR * (1 + 2 * RELATIVE)),
          );
          for (const [lot] of holders) expect(forward.has(lot)).toBe(true);
        }
      }),
    );
  });

  it('mass is conserved from receipt to uses: what was received is used or left, in whatever mixture', () => {
    fc.assert(
      fc.property(randomGenealogy(), (plant) => {
        const rest = new Map(plant.lots.map(({ id, kg }) => [id, Number(kg)]));
        for (const { input, quantity } of plant.inputs) rest.set(input, (rest.get(input) ?? 0) - Number(quantity));
        const whole = [...rest.values()].reduce((sum, kg) => sum + kg, 0);
        // `rest` is what was used plus what is left: all that did not go into another lot.
        const found = new Map<string, number>();
        for (const [lot, composition] of compositions(plant)) {
          for (const { source, role, fraction } of composition) {
            const keys = [...(source === null ? [] : [`source ${source}`]), `role ${role}`];
            for (const key of keys) found.set(key, (found.get(key) ?? 0) + fraction * (rest.get(lot) ?? 0));
          }
        }
        const byRole = new Map<string, number>();
        for (const { id, role, kg, received } of plant.lots) {
          if (!received) continue;
          byRole.set(role, (byRole.get(role) ?? 0) + Number(kg));
          // A source lacks what went to remainders: less than the floor of any lot.
          expect(Math.abs((found.get(`source ${id}`) ?? 0) - Number(kg))).toBeLessThanOrEqual(FLOOR * whole);
        }
        for (const [role, kg] of byRole)
          expect(Math.abs((found.get(`role ${role}`) ?? 0) - kg)).toBeLessThanOrEqual(1e-12 * whole);
      }),
    );
  });

  it('the order of inputs does not matter, to the last bit', () => {
    fc.assert(
      fc.property(randomGenealogy(), (plant) => {
        const turned = { ...plant, lots: [...plant.lots].reverse(), inputs: [...plant.inputs].reverse() };
        expect(new Map([...compositions(turned)].reverse())).toEqual(compositions(plant));
      }),
    );
  });

  it('a lot is upstream of another exactly when that one is downstream of it', () => {
    fc.assert(
      fc.property(randomGenealogy(30), (plant) => {
        const inputs = inputsOf(graphOf(plant));
        for (const { id } of plant.lots) {
          for (const member of membersDownstream(id, inputs)) expect(lotsUpstream(member, inputs).has(id)).toBe(true);
          for (const source of lotsUpstream(id, inputs)) expect(membersDownstream(source, inputs).has(id)).toBe(true);
        }
      }),
    );
  });

  it('the walk itself agrees forward and backward, to the last digit', () => {
    fc.assert(
      fc.property(randomGenealogy(), (plant) => {
        const backward = new Map<string, unknown>();
        for (const hull of new Set(plant.joins.map((join) => join.hull))) {
          for (const { lot, kg } of walkLotsIn(hull, plant)) backward.set(`${hull} ${lot}`, kg);
        }
        const forward = plant.lots.flatMap(({ id }) =>
          walkHullsWith(id, plant, { floor: FLOOR }).map(({ hull, kg }): [string, unknown] => [`${hull} ${id}`, kg]),
        );
        expect(new Map(forward)).toEqual(backward);
      }),
      { numRuns: 40 },
    );
  });
});

describe('in a tank of several hundred fills over heels of 10 to 35 %', () => {
  const chains = tankChain({ minFills: 200, maxFills: 400 });

  it('the last fill is what the walk says', () => {
    fc.assert(
      fc.property(chains, (plant) => {
        const last = plant.lots.at(-1)?.id ?? '';
        const composition = resolveComposition(last, graphOf(plant));
        expect(composition.length).toBeGreaterThan(10);
        agreesWithWalk(last, composition, plant);
      }),
      { numRuns: 5 },
    );
  });

  it('fill built on fill, each cut at the floor, stays within twice the floor of the walk and sums to 1', () => {
    fc.assert(
      fc.property(chains, (plant) => {
        const kept = new Map<string, Composition>();
        const lots = graphOf(plant);
        for (const { id, role, received } of plant.lots) {
          const inputs = lots.get(id)?.inputs.map(({ lot, kg }) => ({ kg, composition: kept.get(lot) ?? [] })) ?? [];
          kept.set(id, received ? receivedComposition(id, role) : mixComposition(inputs));
        }
        const last = plant.lots.at(-1)?.id ?? '';
        const found = new Map(kept.get(last)?.map(({ source, fraction }) => [source, fraction]));
        // A cut loses less than the floor, and the next fill keeps at most 35 % of the loss: floor / (1 - 0.35) at most.
        for (const [source, exact] of walkComposition(last, plant)) {
          const fraction = toNumber(exact);
          expect(found.get(source) ?? 0).toBeLessThanOrEqual(fraction * (1 + RELATIVE));
          expect(found.get(source) ?? 0).toBeGreaterThanOrEqual(fraction * (1 - RELATIVE) - 2 * FLOOR);
        }
        for (const composition of kept.values()) expect(Math.abs(total(composition) - 1)).toBeLessThanOrEqual(1e-12);
      }),
      { numRuns: 5 },
    );
  });

  it('a first delivery is downstream in every fill, and by name in the first few dozen', () => {
    fc.assert(
      fc.property(chains, (plant) => {
        const first = plant.lots[0]?.id ?? '';
        const fills = plant.lots.filter(({ origin }) => origin === 'tank').length;
        expect(membersDownstream(first, inputsOf(graphOf(plant))).size).toBe(fills + 1);
        const named = fractionsDownstream(first, graphOf(plant)).size;
        expect(named).toBeGreaterThan(5);
        expect(named).toBeLessThan(40);
        expect(walkHullsWith(first, plant, { floor: FLOOR }).filter(({ trace }) => !trace)).toHaveLength(named - 1);
      }),
      { numRuns: 5 },
    );
  });
});
