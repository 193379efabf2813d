import { afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import { Shop } from '../../support/shop.js';
import { deployWeb, type Deployed } from '../../support/web/deployed.js';
import { page, service, watched } from '../stage.js';
import { comesTrue } from '../../support/web/comes-true.js';
import { Hands, openTablet, readyForNoNetwork, rowsWhere } from '../tablets.js';

/** The web app that the service of these cases serves. */
export let deployed: Deployed;

export const deployFirst = async (): Promise<Deployed> => {
  deployed = await deployWeb();
  return deployed;
};

const OF_PART = `t.part_id = (select p.id from fact.part p where p.number = $1)`;
const versionOf = (): Promise<string | null> =>
  page.evaluate<string | null>(`document.querySelector('meta[name=deployed]')?.content ?? null`);

describe('a newer version of the app', () => {
  beforeAll(async () => {
    const shop = new Shop(service);
    for (const hull of ['NV-1', 'NV-2']) await shop.startHull(hull);
  });
  afterEach(() => watched.close());

  it('waits for a person, under whom the older one works on; unsent work outlives the change and is sent once', async () => {
    await openTablet('/station', 'TAB-V', 'LAM-1');
    await readyForNoNetwork(page);
    await page.getByText('NV-1-H').waitFor();
    expect(await versionOf()).toBeNull();
    // Its Wi-Fi is too poor for what it writes, while the new version comes through.
    await page.route('**/api/layers', (route) => route.abort());
    const hands = new Hands(page);
    await hands.tap('link', /NV-1-H L1/);
    await hands.tap('button', '30 min');
    await hands.tap('button', /As scheduled, 1 part/);
    await page.getByText('1 waits to be sent.').waitFor();

    await deployed.deploy('second', /^bay-page-.*\.js$/);
    await page.goto(`${service.url}/station`);
    const newer = page.getByRole('button', { name: 'A new version is here: load it' });
    await newer.waitFor();
    expect(await versionOf()).toBeNull();
    // A page of the older version that was not opened before, whose file the service has no more.
    await page.getByRole('link', { name: 'Defects and repairs' }).tap();
    await page.getByLabel('Hull or part').waitFor();
    await page.getByText('1 waits to be sent.').waitFor();
    await page.getByRole('link', { name: 'Start' }).tap();

    await newer.tap();
    await comesTrue(page, `document.querySelector('meta[name=deployed]')?.content === 'second'`);
    await page.getByText('1 waits to be sent.').waitFor();
    await page.getByRole('link', { name: 'LAM-1', exact: true }).waitFor();
    expect(await newer.count()).toBe(0);
    expect(await rowsWhere('layer_record', OF_PART, ['NV-1-H'])).toBe(0);
    await page.unroute('**/api/layers');
    await page.evaluate("dispatchEvent(new Event('online'))");
    await page.getByText('All sent').waitFor({ timeout: 20_000 });
    expect(await rowsWhere('layer_record', OF_PART, ['NV-1-H'])).toBe(1);
    await page.reload();
    await page.getByText('All sent').waitFor();
    expect(await versionOf()).toBe('second');
    expect(await rowsWhere('layer_record', OF_PART, ['NV-1-H'])).toBe(1);
  });
});
