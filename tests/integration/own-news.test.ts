import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { OwnNews } from '@hull-record/contracts';
import { lookedAt } from '../support/after-corrections.js';
import { issued, releasedHull } from '../support/certificates.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let told: OwnNews[];
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/dealers', { code: 'PRW', name: 'Pell Reach Watercraft', place: 'Pell Reach' });
  for (const dealer of ['NLM', 'PRW'])
    await shop.act('/api/people', { badge: `D-${dealer}`, name: 'Desk', roles: ['dealer'], dealer });
  await issued(shop, await releasedHull(shop, 'N1'));
  await shop.act('/api/hulls/N1/life', { what: 'at dealer', dealer: 'NLM' });
  const [reading] = await service.asOwner<{ id: string }>(
    "select id from fact.reading where what = 'wet film' order by value limit 1",
  );
  const set = { kind: 'reading', lastWet: '15', nextDry: '17' };
  await shop.act('/api/corrections', { corrects: reading?.id, reason: 'read again', set });
  await lookedAt(service);
  told = await news('D-NLM');
}, 120_000);
afterAll(() => service.close());

const news = async (badge: string): Promise<OwnNews[]> =>
  (await (await fetch(`${service.url}/api/own-news`, { headers: await service.signedIn(badge) })).json()) as OwnNews[];
const acknowledge = (badge: string) =>
  shop.post('/api/own-acknowledgements', shop.envelope({ enteredBy: badge, about: told[0]?.id }));

describe('what a dealer is told', () => {
  it('is which printed values of a certificate are not on record any more, since the last acknowledgement', () => {
    expect(told).toMatchObject([
      { what: 'certificate withdrawn', hull: 'N1', certificate: 'C-000001', issue: 1, acknowledgedAt: null },
    ]);
    expect(told[0]?.changed?.[0]?.what).toContain('readings');
  });

  it('is told and acknowledged for own hulls alone: another dealer is answered as if it were not there', async () => {
    expect(await news('D-PRW')).toEqual([]);
    expect(await acknowledge('D-PRW')).toMatchObject({ status: 422 });
    expect((await news('D-NLM'))[0]?.acknowledgedAt).toBeNull();
  });

  it('is acknowledged once', async () => {
    expect(await acknowledge('D-NLM')).toMatchObject({ status: 201 });
    expect(await acknowledge('D-NLM')).toMatchObject({ status: 409, body: { type: '/problems/acknowledged-already' } });
    expect((await news('D-NLM'))[0]?.acknowledgedAt).not.toBeNull();
  });
});
