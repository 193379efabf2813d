import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { kg, Shop } from '../support/shop.js';
import { startService, type RunningService } from '../support/service.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

it('walks', async () => {
  await shop.receive('G-1', 'GEL-W');
  await shop.receive('R-1', 'RES-VE');
  await shop.receive('M-1', 'MAT-450');
  await shop.fill('T1-1', null, [{ lot: 'R-1', amount: kg(500) }]);
  await shop.wholeHull('86-1', { gel: 'G-1', resin: { tank: 'T1' }, glass: 'M-1' });
  const hull = await shop.get('/api/hulls/86-1');
  expect(hull.body).toMatchObject({ release: { inTheWay: [] } });
  await shop.act('/api/hulls/86-1/releases', {});
  console.log(JSON.stringify((await shop.get('/api/parts/86-1-H')).body, null, 1).slice(0, 3000));
  console.log(JSON.stringify((await shop.get('/api/lots/R-1/hulls')).body, null, 1));
  console.log(JSON.stringify((await shop.get('/api/lots/T1-1/hulls')).body, null, 1));
  console.log(JSON.stringify((await shop.get('/api/hulls/86-1/lots')).body, null, 1));
  console.log(JSON.stringify((await shop.get('/api/hulls')).body, null, 1));
  console.log(JSON.stringify((await shop.get('/api/lots')).body, null, 1).slice(0, 800));
});
