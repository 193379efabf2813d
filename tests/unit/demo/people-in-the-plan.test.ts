import { describe, expect, it } from '@jest/globals';
import { planDemo } from '../../../apps/service/src/demo/plan/plan.js';
import type { Step } from '../../../apps/service/src/demo/plan/step.js';

const steps = planDemo();
const byId = new Map(steps.map((step) => [step.body.id, step]));

const makers = (step: Step | undefined): readonly string[] => (step?.body['doneBy'] as string[] | undefined) ?? [];

describe('people in the demo plant', () => {
  it.each(['signHoldPoint', 'judgeRepair'] as const)('do not judge their own work: %s', (act) => {
    const judged = steps.filter((step) => step.act === act);
    const own = judged.filter((step) => makers(byId.get(step.of ?? '')).includes(String(step.body['enteredBy'])));
    expect(judged.length).toBeGreaterThan(30);
    expect(judged.filter((step) => makers(byId.get(step.of ?? '')).length === 0)).toEqual([]);
    expect(own).toEqual([]);
  });

  it('have names that say that they are invented', () => {
    const names = steps.filter(({ act }) => act === 'registerPerson').map(({ body }) => String(body['name']));
    expect(names.length).toBeGreaterThan(10);
    expect(names.filter((name) => !name.startsWith('Demo '))).toEqual([]);
  });

  it('enter nothing before they and their devices are registered', () => {
    const known = new Set(['ADMIN', 'DESK']);
    const strangers = steps.filter(({ act, body }) => {
      const { enteredBy, device } = body as unknown as { enteredBy: string; device: string };
      const unknown = !known.has(enteredBy) || !known.has(device);
      if (act === 'registerPerson') known.add(String(body['badge']));
      if (act === 'registerDevice') known.add(String(body['code']));
      return unknown;
    });
    expect(strangers).toEqual([]);
  });
});
