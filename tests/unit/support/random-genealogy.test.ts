import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { randomGenealogy, tankChain } from '../../support/random-genealogy.js';
import { toNumber, walkComposition } from '../../support/walk/index.js';
import type { InventedGenealogy } from '../../support/random-genealogy.js';

const grams = (kg: string): number => Math.round(Number(kg) * 1000);
const drawnFrom = (lot: string, { inputs, uses }: InventedGenealogy): number =>
  [
    ...inputs.filter((each) => each.input === lot).map((each) => each.quantity),
    ...uses.filter((each) => each.lot === lot).map((each) => each.kg),
  ]
    .map(grams)
    .reduce((sum, each) => sum + each, 0);

describe.each([
  ['an invented plant', randomGenealogy()],
  ['an invented tank', tankChain({ minFills: 2, maxFills: 30 })],
])('%s', (_what, arbitrary) => {
  it('never draws more from a lot than there is, and makes lots of the mass of their inputs', () => {
    fc.assert(
      fc.property(arbitrary, (plant) => {
        for (const { id, kg, received } of plant.lots) {
          expect(drawnFrom(id, plant)).toBeLessThanOrEqual(grams(kg));
          const into = plant.inputs.filter((each) => each.lot === id).map((each) => grams(each.quantity));
          if (!received) expect(into.reduce((sum, each) => sum + each, 0)).toBe(grams(kg));
          expect(into.length > 0).toBe(!received);
        }
      }),
    );
  });

  it('makes every lot of lots that came before it, each at most once', () => {
    fc.assert(
      fc.property(arbitrary, ({ lots, inputs }) => {
        const at = new Map(lots.map(({ id }, index) => [id, index]));
        for (const { lot, input } of inputs) expect(at.get(input)).toBeLessThan(at.get(lot) ?? -1);
        expect(new Set(inputs.map(({ lot, input }) => `${lot} ${input}`)).size).toBe(inputs.length);
      }),
    );
  });
});

describe('an invented plant, a hundred times', () => {
  const plants = fc.sample(randomGenealogy(), { seed: 1, numRuns: 100 });
  const share = (holds: (plant: InventedGenealogy) => boolean): number => plants.filter(holds).length / plants.length;
  const made = ({ lots }: InventedGenealogy) => new Set(lots.filter(({ received }) => !received).map(({ id }) => id));

  it.each<[string, (plant: InventedGenealogy) => boolean]>([
    ['mixtures of mixtures', (plant) => plant.inputs.some(({ input }) => made(plant).has(input))],
    [
      'a tank fill over a heel',
      ({ inputs }) => inputs.some(({ lot, input }) => lot.startsWith('tank') && input.startsWith('tank')),
    ],
    ['a repair', ({ uses }) => uses.some(({ place }) => place === 'repair-1')],
    [
      'uses of made lots on a hull',
      ({ uses, joins }) =>
        uses.some(({ lot, part }) => !lot.startsWith('received') && joins.some((each) => each.part === part)),
    ],
    [
      'a source below 1e-9 of a lot',
      (plant) =>
        plant.lots.some(({ id }) => [...walkComposition(id, plant).values()].some((each) => toNumber(each) < 1e-9)),
    ],
    ['a part on no hull', ({ uses, joins }) => uses.some(({ part }) => !joins.some((each) => each.part === part))],
  ])('often has %s', (_what, holds) => {
    expect(share(holds)).toBeGreaterThan(0.4);
  });
});
