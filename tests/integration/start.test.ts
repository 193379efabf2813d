import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { startService, type RunningService } from '../support/service.js';

let service: RunningService;
beforeAll(async () => {
  service = await startService();
});
afterAll(() => service.close());

it('answers that it is alive and ready', async () => {
  const answer = await fetch(`${service.url}/health/ready`);
  expect(await answer.json()).toEqual({ ready: true, demo: { state: 'off', done: 0, total: 0 } });
});
