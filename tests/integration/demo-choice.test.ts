import { afterAll, afterEach, beforeEach, describe, expect, it, jest } from '@jest/globals';
import { Logger } from '@nestjs/common';
import { DemoPlant } from '../../apps/service/src/demo/demo-plant.js';
import { DemoProgress } from '../../apps/service/src/platform/demo-progress.js';
import { countFacts } from '../support/count-facts.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
beforeEach(async () => {
  service = await startService({ roles: 'as opened' });
});
afterEach(() => service.close());

const errors = jest.spyOn(Logger.prototype, 'error').mockImplementation(() => {});
afterAll(() => errors.mockRestore());

describe('the demo plant', () => {
  it('leaves a plant alone in which somebody is registered already', async () => {
    await new Shop(service).act('/api/people', { badge: 'LAM-77', name: 'Somebody', roles: ['laminator'] });
    const before = await countFacts(service);
    await service.get(DemoPlant).load(() => {});
    expect(await countFacts(service)).toEqual(before);
    expect(service.get(DemoProgress).now).toEqual({ state: 'off', done: 0, total: 0 });
  });

  it('says why it failed when a code is taken, and the service goes on', async () => {
    const shop = new Shop(service);
    await shop.act('/api/devices', {
      code: 'TAB-MOLD',
      description: 'Tablet of somebody',
      ratedForClassifiedArea: false,
    });
    await service.get(DemoPlant).load(() => {});
    const { body } = await shop.get('/health/ready');
    expect(body).toMatchObject({ ready: true, demo: { state: 'failed', done: 18 } });
    expect(service.get(DemoProgress).now.detail).toMatch(/^device TAB-MOLD: /);
    expect(errors).toHaveBeenCalledWith(expect.stringContaining('device TAB-MOLD'));
  });

  it('answers that it is ready while the demo is loading, and stops after the fact in hand', async () => {
    const demo = service.get(DemoPlant);
    const loading = demo.load(() => {});
    const answers: unknown[] = [];
    while (answers.length < 5) answers.push((await new Shop(service).get('/health/ready')).body);
    demo.stop();
    await loading;
    expect(answers.at(-1)).toMatchObject({ ready: true, demo: { state: 'loading' } });
    const { done, total } = service.get(DemoProgress).now;
    const [journal] = await service.asOwner<{ facts: number }>('select count(*)::int as facts from fact.journal');
    expect(journal?.facts).toBe(done + 1);
    expect(done).toBeLessThan(total);
  });
});
