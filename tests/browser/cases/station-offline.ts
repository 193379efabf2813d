import { afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import { Shop } from '../../support/shop.js';
import { Hands, openTablet, readyForNoNetwork, rowsWhere } from '../tablets.js';
import { comesTrue } from '../../support/web/comes-true.js';
import { page, service, watched } from '../stage.js';

const READINGS = 20;
const OF_PART = `t.part_id = (select p.id from fact.part p where p.number = $1)`;

const enterLayer = async (part: string, lot?: string): Promise<void> => {
  const hands = new Hands(page);
  await hands.tap('link', new RegExp(`${part} L1`));
  if (lot !== undefined) await hands.type('Scan or type a lot, tank or gun', lot);
  await hands.tap('button', '30 min');
  await hands.tap('button', /1 part/);
  await page.getByText('Kept', { exact: true }).waitFor();
};

describe('with no network', () => {
  beforeAll(async () => {
    const shop = new Shop(service);
    for (const hull of ['OFF-1', 'OFF-2', 'OFF-3', 'OFF-4']) await shop.startHull(hull);
  });
  afterEach(() => watched.close());

  it('twenty readings and a use outlive a reload and a closed page, and each is recorded exactly once', async () => {
    await openTablet('/station', 'TAB-C', 'LAM-1');
    await page.getByText('OFF-1-H').waitFor();
    await readyForNoNetwork(page);
    await page.getByText('OFF-1-H').waitFor();
    const context = page.context();
    await context.setOffline(true);
    await page.reload();
    await enterLayer('OFF-1-H');
    await page.getByRole('link', { name: 'Take its readings' }).tap();
    for (let spot = 1; spot <= READINGS; spot += 1) {
      await page.getByRole('button', { name: /^18 inside/ }).tap();
      await page.getByText(`Spot ${spot + 1} of 3:`).waitFor();
    }
    await page.getByText(`${READINGS + 1} wait to be sent.`).waitFor();
    await page.reload();
    await page.getByText(`${READINGS + 1} wait to be sent.`).waitFor();
    await page.close();
    const later = await context.newPage();
    await later.goto(`${service.url}/station`);
    await later.getByText(`${READINGS + 1} wait to be sent.`).waitFor();
    await later.getByText('No network since').waitFor();
    expect(await rowsWhere('layer_record', OF_PART, ['OFF-1-H'])).toBe(0);
    await context.setOffline(false);
    await later.getByText('All sent').waitFor({ timeout: 20_000 });
    expect(await rowsWhere('layer_record', OF_PART, ['OFF-1-H'])).toBe(1);
    const ofLayer = `in (select r.root from fact.layer_record r where r.part_id = (select p.id from fact.part p where p.number = $1))`;
    expect(await rowsWhere('reading', `t.of_id ${ofLayer}`, ['OFF-1-H'])).toBe(READINGS);
    expect(await rowsWhere('used', `t.into_id ${ofLayer}`, ['OFF-1-H'])).toBe(1);
    const proved = await service.asOwner<{ identity: string; offset: number }>(
      `select distinct identity, (entry::json -> 'body' ->> 'clockOffsetMs')::int is not null as offset from fact.journal j
       join fact.device d on d.root = j.device_id where d.code = 'TAB-C'`,
    );
    expect(proved).toEqual([{ identity: 'proved', offset: true }]);
  });

  it('a page that was opened before its worker was there says when it is ready, goes on and starts again', async () => {
    await openTablet('/station', 'TAB-N', 'LAM-1');
    await page.getByText('Ready to work with no network.').waitFor();
    await comesTrue(page, 'navigator.serviceWorker.controller !== null');
    await page.context().setOffline(true);
    // Neither this page of the station nor that one was loaded before.
    await page.getByRole('link', { name: /^Defects and repairs/ }).tap();
    await page.getByLabel('Hull or part').waitFor();
    await page.goto(`${service.url}/station/outbox`);
    await page.getByText('Nothing waits').waitFor();
    await page.getByText('Ready to work with no network.').waitFor();
  });

  it('two windows of one tablet send each entry once', async () => {
    await openTablet('/station', 'TAB-D', 'LAM-1');
    await page.getByText('OFF-4-H').waitFor();
    await readyForNoNetwork(page);
    const context = page.context();
    const second = await context.newPage();
    await second.goto(`${service.url}/station`);
    await second.getByText('OFF-4-H').waitFor();
    const sent: string[] = [];
    context.on(
      'request',
      (request) => request.method() === 'POST' && request.url().endsWith('/api/layers') && sent.push(request.url()),
    );
    await context.setOffline(true);
    await enterLayer('OFF-4-H');
    await second.getByText('1 waits to be sent.').waitFor();
    sent.length = 0;
    await context.setOffline(false);
    await page.getByText('All sent').waitFor({ timeout: 20_000 });
    await second.getByText('All sent').waitFor({ timeout: 20_000 });
    expect(sent).toHaveLength(1);
    expect(await rowsWhere('layer_record', OF_PART, ['OFF-4-H'])).toBe(1);
  });

  it('of two tablets on one hull the second is refused, told why, and sets its entry aside with a reason', async () => {
    await openTablet('/station', 'TAB-E', 'LAM-2');
    await page.getByText('OFF-2-H').waitFor();
    await readyForNoNetwork(page);
    await page.getByText('OFF-2-H').waitFor();
    await page.context().setOffline(true);
    const gel = await new Shop(service).layer('OFF-2', 'L1', [
      { lot: 'G-1', amount: { quantity: 17, unit: 'kg', basis: 'weighed' } },
    ]);
    await enterLayer('OFF-2-H');
    await page.context().setOffline(false);
    await page.getByText('1 was refused.').waitFor({ timeout: 20_000 });
    await page.getByRole('link', { name: 'See them' }).tap();
    await page.getByText('This layer is recorded already').waitFor();
    await page.getByRole('button', { name: 'Set it aside' }).tap();
    await page.getByLabel('Why it is not to be sent').fill('TAB-A had it first');
    await page.getByRole('button', { name: 'Set aside with this reason' }).tap();
    await page.getByText('All sent').waitFor();
    await page.getByText('TAB-A had it first').waitFor();
    const [row] = await service.asOwner<{ id: string }>(
      `select r.root as id from fact.layer_record r join fact.part p on p.id = r.part_id where p.number = 'OFF-2-H'`,
    );
    expect(row?.id).toBe(gel);
  });

  it('a refused entry holds back its own part alone, and is mended and sent', async () => {
    await openTablet('/station', 'TAB-F', 'LAM-1');
    await page.getByText('OFF-3-H').waitFor();
    await enterLayer('OFF-3-H', 'G-TYPO');
    await page.getByText('1 was refused.').waitFor();
    await page.getByRole('link', { name: 'See them' }).tap();
    await page.getByRole('button', { name: 'Mend it' }).tap();
    await page.getByLabel('used 0 lot').fill('G-1');
    await page.getByRole('button', { name: 'Send it mended' }).tap();
    await page.getByText('All sent').waitFor();
    expect(await rowsWhere('layer_record', OF_PART, ['OFF-3-H'])).toBe(1);
  });
});
