import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { readPaper } from '../support/papers/read-paper.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

describe('a lot on hold', () => {
  it('is so wherever it is looked up, and in the build record of a hull that waits', async () => {
    await shop.receive('HELD-3', 'RES-VE');
    await shop.startHull('W-1');
    await shop.layer('W-1', 'L2', [{ lot: 'HELD-3', amount: kg(5) }]);
    const said = async (): Promise<readonly unknown[]> => {
      const { holds: kinds } = await shop.read<{ holds: string[] }>('/api/lots/HELD-3');
      const report = (await readPaper(service, '/api/lots/HELD-3/report.pdf')).text;
      const record = (await readPaper(service, '/api/hulls/W-1/build-record.pdf')).text;
      return [kinds, /donotuseit/.test(report), /holdforsafetyisopenonit/.test(record)];
    };
    expect(await said()).toEqual([[], false, false]);
    const hold = await shop.act('/api/lots/HELD-3/holds', { kind: 'safety', reason: 'gel time' });
    expect(await said()).toEqual([['safety'], true, true]);
    await shop.act(`/api/holds/${hold}/lifts`, { reason: 'tested again' });
    expect(await said()).toEqual([[], false, false]);
  });
});
