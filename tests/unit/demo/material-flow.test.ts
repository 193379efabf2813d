import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { Amount, Taken } from '@hull-record/contracts';
import { kilogramsOf, type MaterialCode } from '../../../apps/service/src/demo/plan/materials.js';
import { planDemo } from '../../../apps/service/src/demo/plan/plan.js';
import type { Step } from '../../../apps/service/src/demo/plan/step.js';

const MADE = ['receiveLot', 'makeMix', 'cutKit', 'fillTank'];

const takenOf = ({ body }: Step): readonly Taken[] => [
  ...((body['inputs'] as Taken[] | undefined) ?? []),
  ...((body['used'] as Taken[] | undefined) ?? []),
];

const seeds = fc.string({ minLength: 1, maxLength: 8 });

const onSeeds = (holds: (steps: readonly Step[]) => void): void =>
  fc.assert(
    fc.property(seeds, (seed) => holds(planDemo(seed))),
    { numRuns: 6, examples: [['Tarrow Sound Boats 1']] },
  );

describe('the material of the demo plant', () => {
  it('is taken in amounts above nothing, from lots and tanks that are there by then', () => {
    onSeeds((steps) => {
      const there = new Set<string>();
      const wrong: Taken[] = [];
      for (const step of steps) {
        const taken = takenOf(step);
        const isThere = ({ lot, tank, gun, unidentified }: Taken): boolean =>
          unidentified !== undefined || there.has(lot ?? tank ?? gun ?? '');
        wrong.push(...taken.filter((each) => !(Number(each.amount.quantity) > 0 && isThere(each))));
        if (MADE.includes(step.act)) there.add(String(step.body['code']));
        if (step.act === 'fillTank' || step.act === 'hookUpGun') there.add(step.of ?? '');
      }
      expect(wrong).toEqual([]);
    });
  });

  it('never runs out: of no received lot is more taken than came in', () => {
    onSeeds((steps) => {
      const left = new Map<string, { material: MaterialCode; kg: number }>();
      for (const step of steps) {
        if (step.act === 'receiveLot') {
          const { code, material, amount } = step.body as unknown as {
            code: string;
            material: MaterialCode;
            amount: Amount;
          };
          left.set(code, { material, kg: kilogramsOf(material, amount) });
        }
        for (const { lot, amount } of takenOf(step)) {
          const from = left.get(lot ?? '');
          if (from) from.kg -= kilogramsOf(from.material, amount);
        }
      }
      const overdrawn = [...left].filter(([, { kg }]) => kg < -1e-6);
      expect(overdrawn).toEqual([]);
    });
  });

  it('goes through tanks that are refilled over a heel of 10 to 37 percent', () => {
    onSeeds((steps) => {
      const fills = steps.filter(({ act, of }) => act === 'fillTank' && of === 'T1');
      expect(fills.length).toBeGreaterThanOrEqual(12);
      expect(fills[0]?.body['heel']).toBeNull();
      for (const { body } of fills.slice(1)) {
        const heel = Number((body['heel'] as Amount).quantity);
        const filled = (body['inputs'] as Taken[]).reduce((kg, { amount }) => kg + Number(amount.quantity), 0);
        expect(heel / (heel + filled)).toBeGreaterThan(0.09);
        expect(heel / (heel + filled)).toBeLessThan(0.375);
      }
    });
  });

  it('is corrected twice, each time to something else than was entered', () => {
    const steps = planDemo();
    const corrections = steps
      .filter(({ act }) => act === 'correct')
      .map(({ name, body }) => ({ name, set: body['set'] }));
    const of = (name: string): readonly Taken[] => takenOf(steps.find((step) => step.name === name) as Step);
    for (const { name, set } of corrections) {
      const entered = JSON.stringify(of(name.replace(' corrected', '')));
      const { input, amount } = set as { input?: string; amount?: Amount };
      expect(entered).not.toContain(`"${input ?? amount?.quantity ?? ''}"`);
    }
    expect(corrections.map(({ set }) => (set as { kind: string }).kind)).toEqual(['used', 'lot input']);
  });
});
