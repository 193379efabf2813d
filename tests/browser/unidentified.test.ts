import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import './cases/unnamed-in-bay.js';
import { blank } from '../support/photos.js';
import { axeFindings } from '../support/web/axe.js';
import { Hands, openTablet, readyForNoNetwork, rowsWhere } from './tablets.js';
import { clearStage, open, page, service, setStageOf, watched } from './stage.js';

/** A shop that is open, with a lot of gel coat and parts to lay up. */
beforeAll(
  () =>
    setStageOf(async (shop) => {
      await shop.open();
      await shop.receive('G-1', 'GEL-W');
      for (const hull of ['UN-1', 'UN-2', 'UN-3', 'UN-4', 'UN-5']) await shop.startHull(hull);
    }),
  120_000,
);
afterAll(clearStage);

/** The material of these cases; the bay has its own. */
const PAIL = `l.origin = 'unidentified' and l.looks = 'white, pail without a label'`;
const OF_PART = `t.part_id = (select p.id from fact.part p where p.number = $1)`;

/** Says of the one material of the layer that nobody can name it, with a photo. */
const sayUnnamed = async (hands: Hands): Promise<void> => {
  await hands.tap('button', /gel coat.* G-1/i);
  await hands.tap('button', 'nobody can name it');
  await page.getByRole('alert').getByText('Take material that is labelled').waitFor();
  await hands.type('What it looked like', 'white, pail without a label');
  await page.locator('input[type=file]').setInputFiles({
    ...{ name: 'pail.jpg', mimeType: 'image/jpeg' },
    buffer: await blank(40, 30).jpeg().toBuffer(),
  });
  await page
    .getByText(/^Photo 1/)
    .first()
    .waitFor();
  await hands.tap('button', /It is done already/);
  await hands.tap('button', '30 min');
  await hands.tap('button', /Keep it, 1 part/);
};

describe('material that nobody can name, at the station', () => {
  it('is stopped before it is used, and kept with its looks and a photo: five touches, a field and a photo', async () => {
    const hands = new Hands(await openTablet('/station/layer?part=UN-1-H', 'TAB-U', 'LAM-1'));
    await page.getByText('G-1').first().waitFor();
    await sayUnnamed(hands);
    // Until it is kept, all that there was is sent.
    await page.getByText('Kept', { exact: true }).waitFor();
    await page.getByText('All sent').waitFor({ timeout: 20_000 });
    expect([hands.taps, hands.fields]).toEqual([5, 1]);
    const [lot] = await service.asOwner<{ code: string; looks: string; role: string; photos: number }>(
      `select l.code, l.looks, l.role, (select count(*)::int from fact.lot_photo x where x.lot_id = l.root) as photos
       from fact.lot l where ${PAIL}`,
    );
    expect(lot).toMatchObject({ looks: 'white, pail without a label', role: 'gel coat', photos: 1 });
    await watched.close();
    await open(`/store/lots/${lot?.code}`, {}, 'REC-1');
    await page.getByRole('img', { name: new RegExp(`Photo of ${lot?.code}`) }).waitFor();
    await watched.close();
  });

  it('says what is missing while its looks are not told, and is without a finding of the accessibility checker', async () => {
    const hands = new Hands(await openTablet('/station/layer?part=UN-2-H', 'TAB-U', 'LAM-1'));
    await hands.tap('button', /gel coat.* G-1/i);
    await hands.tap('button', 'nobody can name it');
    await hands.tap('button', /It is done already/);
    await hands.tap('button', '30 min');
    await page.getByText('say first what it looked like').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await hands.tap('button', /Keep it, 1 part/);
    expect(await page.getByText('Kept', { exact: true }).count()).toBe(0);
    await watched.close();
  });

  it('is kept with no network: layer and photo outlive a reload, and each is recorded once', async () => {
    await openTablet('/station/layer?part=UN-2-H', 'TAB-U', 'LAM-1');
    await page.getByText('G-1').first().waitFor();
    await readyForNoNetwork(page);
    await page.getByText('G-1').first().waitFor();
    await page.context().setOffline(true);
    await sayUnnamed(new Hands(page));
    await page.getByText('2 wait to be sent.').waitFor();
    await page.reload();
    await page.getByText('2 wait to be sent.').waitFor();
    expect(await rowsWhere('layer_record', OF_PART, ['UN-2-H'])).toBe(0);
    await page.context().setOffline(false);
    await page.getByText('All sent').waitFor({ timeout: 20_000 });
    expect(await rowsWhere('layer_record', OF_PART, ['UN-2-H'])).toBe(1);
    const ofPails = `in (select l.root from fact.lot l where ${PAIL})`;
    expect(await rowsWhere('lot', `t.root ${ofPails}`, [])).toBe(2);
    expect(await rowsWhere('lot_photo', `t.lot_id ${ofPails}`, [])).toBe(2);
    await watched.close();
  });
});
