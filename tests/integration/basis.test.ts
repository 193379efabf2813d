import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const basisIn = async (lot: string): Promise<unknown> => {
  const { body } = await shop.get(`/api/lots/${lot}/hulls`);
  return (body as unknown as { items: { basis: string }[] }).items.map((hull) => hull.basis);
};

it('prints a figure with the weakest basis on its path, and not with that of another path', async () => {
  await shop.receive('R-1', 'RES-VE');
  await shop.receive('R-2', 'RES-VE');
  await shop.startHull('86-1');
  await shop.mix('B-1', [
    { lot: 'R-1', amount: kg(10, 'as scheduled') },
    { lot: 'R-2', amount: kg(10) },
  ]);
  await shop.fill('T1-1', null, [{ lot: 'B-1', amount: kg(5, 'metered') }]);
  await shop.layer('86-1', 'L2', [{ tank: 'T1', amount: kg(2) }]);
  expect(await basisIn('R-1')).toEqual(['as scheduled']);
  expect(await basisIn('R-2')).toEqual(['metered']);
  expect(await basisIn('B-1')).toEqual(['metered']);
  expect(await basisIn('T1-1')).toEqual(['weighed']);
});
