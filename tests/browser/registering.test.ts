import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { GunView, TankView } from '@hull-record/contracts';
import { clearStage, close, open, page, service, setStageOf } from './stage.js';

/** A shop that is open, with a lot of resin and a gun that nothing feeds yet. */
beforeAll(
  () =>
    setStageOf(async (shop) => {
      await shop.open();
      await shop.receive('VE-7', 'RES-VE');
      await shop.act('/api/equipment', { code: 'GUN-7', kind: 'gun', description: 'Chopper gun' });
    }),
  120_000,
);
afterAll(clearStage);

const button = (name: string) => page.getByRole('button', { name, exact: true });
const read = async <T>(path: string): Promise<T> =>
  (await (await fetch(`${service.url}${path}`, { headers: await service.signedIn() })).json()) as T;

describe('what a plant works with', () => {
  it('is put on record by quality: a mold of a model, a tank for a material', async () => {
    await open('/molds', {}, 'QUA-1');
    await page.getByLabel('Code of the mold').fill('M-86-7');
    await page.getByLabel('Model').selectOption('TS86');
    await page.getByLabel('For', { exact: true }).selectOption('hull molding');
    await button('Register a mold').click();
    await page.getByText('Mold M-86-7 is on record.').waitFor();
    expect((await read<readonly { code: string }[]>('/api/molds')).map(({ code }) => code)).toContain('M-86-7');
    await page.goto(`${service.url}/store`);
    await page.getByText('Register a tank', { exact: true }).first().click();
    await page.getByLabel('Code of the tank').fill('T-7');
    await page.locator('details').getByLabel('Material', { exact: true }).selectOption('RES-VE');
    await page.getByLabel('Capacity, kg').fill('750,5');
    await button('Register a tank').click();
    await page.getByText('Tank T-7 is on record.').waitFor();
    expect(await read<TankView[]>('/api/tanks')).toContainEqual(
      expect.objectContaining({ code: 'T-7', material: 'RES-VE', capacityKg: 750.5 }),
    );
    await close();
  });

  it('is hooked up and set by who lays up', async () => {
    await open('/equipment/GUN-7', {}, 'LAM-1');
    await page.getByText('Nothing is hooked up on record').waitFor();
    await page.getByLabel('Feed', { exact: true }).selectOption('resin');
    await page.getByLabel('Lot', { exact: true }).fill('VE-7');
    await button('Record the hook-up').click();
    await page.getByRole('status').getByText('Hooked up to VE-7: resin.').waitFor();
    await page.getByLabel('Per cent of the resin, by mass').fill('1.8');
    await button('Record the setting').click();
    await page.getByRole('status').getByText('Set to 1.8 %.').waitFor();
    expect(await read<GunView>('/api/guns/GUN-7')).toMatchObject({
      hookUps: [{ feed: 'resin', lot: 'VE-7', until: null }],
      settings: [{ catalystPercent: 1.8 }],
    });
    await close();
  });

  it('is only told of to who may not register it, and to nobody before it is known who they are', async () => {
    await open('/molds', {}, 'REC-1');
    const refusal = page.getByText('Register a mold: for the roles quality.');
    await refusal.waitFor();
    expect(await page.getByLabel('Code of the mold').count()).toBe(0);
    let tell: () => void = () => undefined;
    const told = new Promise<void>((resolve) => (tell = resolve));
    await page.route('**/api/session', async (route) => {
      await told;
      await route.continue();
    });
    await page.reload();
    await page.getByRole('heading', { name: 'Register a mold' }).waitFor();
    expect(await refusal.count()).toBe(0);
    tell();
    await refusal.waitFor();
    await close();
  });
});
