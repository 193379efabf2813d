import { describe, expect, it } from '@jest/globals';
import { lotsUpstream, LotCycle, resolveComposition, wouldCycle } from '@hull-record/genealogy';
import fc from 'fast-check';
import { randomGenealogy } from '../../support/random-genealogy.js';
import { graph, graphOf, inputsOf } from './graph-of.js';

describe('putting a lot into another', () => {
  const inputs = inputsOf(graph({ A: 'resin' }, 'T1 < 1 A', 'T2 < 1 T1 + 1 A', 'T3 < 1 T2', 'pot < 1 T3 + 1 T1'));

  it.each([
    ['A', 'T1', ['A', 'T1', 'A']],
    ['T1', 'pot', ['T1', 'pot', 'T1']],
    ['T2', 'pot', ['T2', 'pot', 'T3', 'T2']],
    ['T2', 'T2', ['T2', 'T2']],
    ['new', 'new', ['new', 'new']],
  ])('closes a cycle when %s would take %s', (lot, input, path) => {
    expect(wouldCycle(lot, input, inputs)).toEqual(path);
  });

  it.each([
    ['pot', 'A'],
    ['T3', 'T1'],
    ['new', 'pot'],
    ['A', 'new'],
  ])('closes none when %s takes %s', (lot, input) => {
    expect(wouldCycle(lot, input, inputs)).toBeNull();
  });

  it('closes a cycle exactly when the input is made of the lot, and then no composition is to be had', () => {
    fc.assert(
      fc.property(randomGenealogy(30), fc.nat(), fc.nat(), (plant, a, b) => {
        const [lot, input] = [plant.lots[a % plant.lots.length]?.id ?? '', plant.lots[b % plant.lots.length]?.id ?? ''];
        const recorded = inputsOf(graphOf(plant));
        const path = wouldCycle(lot, input, recorded);
        expect(path !== null).toBe(lotsUpstream(input, recorded).has(lot));
        const after = [...plant.inputs, { lot, input, quantity: '1.000' }];
        const edges = new Set(after.map((each) => `${each.lot} < ${each.input}`));
        for (const [at, each] of (path ?? []).slice(1).entries()) expect(edges).toContain(`${path?.[at]} < ${each}`);
        const resolve = () => resolveComposition(lot, graphOf({ lots: plant.lots, inputs: after }));
        if (path === null) expect(resolve).not.toThrow();
        else expect(resolve).toThrow(LotCycle);
      }),
    );
  });
});
