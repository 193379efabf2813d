import { afterEach, describe, expect, it } from '@jest/globals';
import { taken } from '../../support/photos.js';
import { Shop } from '../../support/shop.js';
import { axeFindings } from '../../support/web/axe.js';
import { page, service, watched } from '../stage.js';
import { openTablet, readyForNoNetwork, rowsWhere } from '../tablets.js';
import { atTablet } from './at-bay.js';

const OF_PART = `t.part_id = (select p.id from fact.part p where p.number = $1)`;

/** Material that nobody could name, by its looks: how many lots there are of it, and photos of these. */
const unnamedLots = async (looks: string): Promise<{ lots: number; photos: number }> => {
  const [row] = await service.asOwner<{ lots: number; photos: number }>(
    `select count(distinct l.root)::int as lots, count(x.id)::int as photos
     from fact.lot l left join fact.lot_photo x on x.lot_id = l.root where l.origin = 'unidentified' and l.looks = '${looks}'`,
  );
  return row!;
};

/** Says in the list of what was used that nobody can name a material, with a photo of it. */
const addUnnamed = async (number: number, looks: string): Promise<void> => {
  await page.getByRole('button', { name: 'Add material' }).click();
  const material = page.getByRole('group', { name: `Material ${number}` });
  await material.getByLabel('Taken from').selectOption({ label: 'nobody can name it' });
  await material.getByLabel('What it looked like').fill(looks);
  await material.getByLabel('How much').fill('0.1');
  await material.locator('input[type=file]').setInputFiles({
    ...{ name: 'pail.jpg', mimeType: 'image/jpeg', buffer: await taken(400, 300) },
  });
  await material.getByRole('img', { name: /^Photo 1/ }).waitFor();
};

const openTouchUp = async (largest: string): Promise<void> => {
  await openTablet('/station/bay/UN-3-H/touch-up', 'TAB-B', 'PAT-1');
  await page.getByRole('combobox', { name: 'Kind' }).selectOption({ label: 'Pit (pinhole)' });
  await page.getByLabel('Largest, mm').fill(largest);
};

describe('material that nobody can name, in the bay', () => {
  afterEach(() => watched.close());

  it('goes into touch-ups with a photo, which stands at its own lot', async () => {
    const patcher = atTablet();
    await openTouchUp('2');
    await patcher.tap('button', 'Add material');
    await patcher.type('Lot or container: scan, or type', 'G-1');
    await page.getByRole('group', { name: 'Material 1' }).getByLabel('How much').fill('0.2');
    await addUnnamed(2, 'white, jar without a lid');
    expect(await axeFindings(page)).toEqual([]);
    await patcher.tap('button', 'Save the touch-ups');
    await page.getByText('Recorded as T1.').waitFor();
    await page.getByText('All sent').waitFor({ timeout: 20_000 });
    expect(await unnamedLots('white, jar without a lid')).toEqual({ lots: 1, photos: 1 });
  });

  it('goes into a repair with no network: repair and photo outlive a reload, and each is recorded once', async () => {
    await new Shop(service).act('/api/parts/UN-4-H/defects', {
      ...{ kind: 'undercure', layer: 'L1', lengthMm: 40, widthMm: 30, depthMm: 2 },
      place: { surface: 'shell', side: 'starboard', fromTransomMm: 2_000, girthMm: 700 },
    });
    const patcher = atTablet();
    await openTablet('/station/bay/UN-4-H/repair', 'TAB-B', 'PAT-1');
    await page.getByLabel('Ground deep, mm').waitFor();
    await readyForNoNetwork(page);
    await patcher.type('Ground deep, mm', '3');
    await patcher.type('Laminate thick, mm', '6');
    await page.context().setOffline(true);
    await addUnnamed(1, 'amber, cup');
    expect(await axeFindings(page)).toEqual([]);
    await patcher.tap('button', 'Hand back for acceptance');
    await page.getByText('2 wait to be sent.').waitFor();
    await page.reload();
    await page.getByText('2 wait to be sent.').waitFor();
    expect(await rowsWhere('repair', OF_PART, ['UN-4-H'])).toBe(0);
    await page.context().setOffline(false);
    await page.getByText('All sent').waitFor({ timeout: 20_000 });
    await page.reload();
    await page.getByText('All sent').waitFor();
    expect(await rowsWhere('repair', OF_PART, ['UN-4-H'])).toBe(1);
    expect(await unnamedLots('amber, cup')).toEqual({ lots: 1, photos: 1 });
  });

  it('is kept without its photo where the tablet has no room for it, and is not asked for again', async () => {
    await openTouchUp('3');
    await addUnnamed(1, 'grey, tin');
    await page.evaluate(`{
      const put = IDBObjectStore.prototype.put;
      // As a browser does it whose disk is full: the write fails later, and its transaction with it.
      IDBObjectStore.prototype.put = function (value, ...rest) {
        const asked = put.call(this, value, ...rest);
        if (value?.bytes instanceof ArrayBuffer) this.transaction.abort();
        return asked;
      };
    }`);
    await page.getByRole('button', { name: 'Save the touch-ups' }).click();
    await page.getByRole('alert').getByText('1 photo could not be kept on this tablet.').waitFor();
    await page.getByText('Recorded as T2.').waitFor();
    expect(await unnamedLots('grey, tin')).toEqual({ lots: 1, photos: 0 });
  });

  it('keeps a repair whose readings find no room, and the readings when there is', async () => {
    await new Shop(service).act('/api/parts/UN-5-H/defects', {
      ...{ kind: 'undercure', layer: 'L1', lengthMm: 40, widthMm: 30, depthMm: 2 },
      place: { surface: 'shell', side: 'starboard', fromTransomMm: 2_000, girthMm: 700 },
    });
    await openTablet('/station/bay/UN-5-H/repair', 'TAB-B', 'PAT-1');
    await page.getByLabel('Ground deep, mm').fill('3');
    await page.getByLabel('Laminate thick, mm').fill('6');
    await page.getByLabel('Barcol of the patch, spot by spot').fill('38 40 39');
    await page.getByRole('button', { name: 'Add material' }).click();
    await atTablet().type('Lot or container: scan, or type', 'G-1');
    await page.getByRole('group', { name: 'Material 1' }).getByLabel('How much').fill('0.2');
    await page.evaluate(`{
      const add = IDBObjectStore.prototype.add;
      window.full = true;
      IDBObjectStore.prototype.add = function (value, ...rest) {
        const asked = add.call(this, value, ...rest);
        if (window.full && String(value?.path).endsWith('/readings')) this.transaction.abort();
        return asked;
      };
    }`);
    await page.getByRole('button', { name: 'Hand back for acceptance' }).click();
    const alert = page.getByRole('alert').filter({ hasText: 'The readings (38 40 39) could not be kept' });
    await alert.getByRole('button', { name: 'Keep the readings' }).click();
    await alert.waitFor();
    await page.evaluate('window.full = false');
    await alert.getByRole('button', { name: 'Keep the readings' }).click();
    await page.getByText('The readings are kept.').waitFor();
    await page.getByText('All sent').waitFor({ timeout: 20_000 });
    expect(await rowsWhere('repair', OF_PART, ['UN-5-H'])).toBe(1);
    const ofRepair = `t.of_id in (select r.root from fact.repair r join fact.part p on p.id = r.part_id where p.number = $1)`;
    expect(await rowsWhere('reading', ofRepair, ['UN-5-H'])).toBe(3);
  });
});
