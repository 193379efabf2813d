import { expect, it } from '@jest/globals';
import { may, type Role } from '@hull-record/contracts';
import { planDemo } from '../../../apps/service/src/demo/plan/plan.js';

const steps = planDemo();
const roles = new Map<string, readonly Role[]>([
  ['ADMIN', ['administrator']],
  ...steps
    .filter(({ act }) => act === 'registerPerson')
    .map(({ body }) => [String(body['badge']), body['roles'] as readonly Role[]] as const),
]);

it('the people of the demo do what their roles allow', () => {
  const notAllowed = new Set(
    steps.flatMap(({ act, body }) =>
      may(roles.get(String(body['enteredBy'])) ?? null, act) ? [] : [`${String(body['enteredBy'])} ${act}`],
    ),
  );
  expect([...notAllowed]).toEqual([]);
  expect(roles.size).toBeGreaterThan(15);
});
