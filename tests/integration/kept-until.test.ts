import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('GEL', 'GEL-W');
  await shop.receive('VE', 'RES-VE');
  await shop.receive('MAT', 'MAT-450');
});
afterAll(() => service.close());

const keepUntil = async (hull: string): Promise<HullView['keepUntil']> =>
  (await shop.read<HullView>(`/api/hulls/${hull}`)).keepUntil;
const released = async (hull: string, happenedAt: string): Promise<void> => {
  await shop.wholeHull(hull, { gel: 'GEL', resin: { lot: 'VE' }, glass: 'MAT' });
  await shop.act(`/api/hulls/${hull}/releases`, { enteredBy: 'QUA-1', happenedAt });
};
const left = (hull: string, happenedAt: string, market?: string): Promise<string> =>
  shop.act(`/api/hulls/${hull}/life`, {
    what: 'left the place of manufacture',
    happenedAt,
    ...(market ? { market } : {}),
  });

describe('until when the record of a hull is kept', () => {
  it('is not said while it is not released', async () => {
    await shop.startHull('K1');
    expect(await keepUntil('K1')).toBeNull();
  });

  it('goes by the market it was placed on: of the US from the day it was built', async () => {
    await released('K2', '2026-03-01T15:00:00.000Z');
    await left('K2', '2026-04-01T15:00:00.000Z', 'US');
    expect(await keepUntil('K2')).toMatchObject({ day: '2036-03-01', source: expect.stringContaining('4310(c)(2)') });
  });

  it('of the EU from the day it was placed, in the time zone of the plant', async () => {
    await released('K3', '2026-03-01T15:00:00.000Z');
    // 1 April, two in the morning UTC: still 31 March in New York.
    await left('K3', '2026-04-01T02:00:00.000Z', 'EU');
    expect(await keepUntil('K3')).toMatchObject({ day: '2036-03-31', source: expect.stringContaining('from memory') });
  });

  it('is the longest of all while no market is named, and follows when it is set right', async () => {
    await released('K4', '2026-03-01T15:00:00.000Z');
    const id = await left('K4', '2026-04-01T15:00:00.000Z');
    expect(await keepUntil('K4')).toMatchObject({ day: '2036-04-01', because: expect.stringContaining('no market') });
    await shop.correct(id, { kind: 'life fact', happenedAt: '2026-04-01T15:00:00.000Z', market: 'US' });
    expect(await keepUntil('K4')).toMatchObject({ day: '2036-03-01' });
  });

  it('knows no market without a rule', async () => {
    const fact = { what: 'exported', market: 'MOON' };
    expect(await shop.post('/api/hulls/K4/life', shop.envelope(fact))).toMatchObject({
      status: 400,
      body: { errors: [{ pointer: '/market' }] },
    });
  });
});
