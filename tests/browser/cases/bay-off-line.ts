import { afterEach, describe, expect, it } from '@jest/globals';
import { createHash } from 'node:crypto';
import { taken } from '../../support/photos.js';
import { open, page, service, watched } from '../stage.js';
import { openTablet, readyForNoNetwork } from '../tablets.js';
import { atTablet, defectsOf, TABLET } from './at-bay.js';

const PART = '86-3-H';
const OTHER = '86-4-H';

describe('a defect that is logged with no network', () => {
  afterEach(() => watched.close());

  it('outlives with its photo a reload and a killed page, and is recorded exactly once', async () => {
    const inspector = atTablet();
    await openTablet(`/station/bay/${PART}/defect`, 'TAB-H', 'INS-1');
    await page.locator('.touch-map').waitFor();
    await readyForNoNetwork(page);
    await inspector.touchHull(0.6, 0.7);
    const context = page.context();
    await context.setOffline(true);
    await inspector.tap('radio', 'Blister');
    await inspector.tap('radio', /^6$/);
    await inspector.tap('radio', /^M, medium$/);
    await inspector.type('Long, mm', '4');
    await inspector.photograph();
    await inspector.tap('button', 'Save the defect');
    await page.getByText('Kept on this device.').waitFor();
    await page.getByText('2 wait to be sent.').waitFor();
    await page.reload();
    await page.getByText('2 wait to be sent.').waitFor();
    await page.close();
    const again = await context.newPage();
    await again.goto(`${service.url}/station`);
    await again.getByText('2 wait to be sent.').waitFor();
    expect(await defectsOf(PART)).toEqual([]);
    await context.setOffline(false);
    await again.getByText('All sent').waitFor({ timeout: 20_000 });
    expect(await defectsOf(PART)).toMatchObject([{ kind: 'blister', photos: 1 }]);
    await again.reload();
    await again.getByText('All sent').waitFor();
    expect(await defectsOf(PART)).toMatchObject([{ kind: 'blister', photos: 1 }]);
  });
});

describe('an entry that the service refuses', () => {
  afterEach(() => watched.close());

  it('stays to be seen, and is mended', async () => {
    const patcher = atTablet();
    await open('/station/bay/86-1-H/repair', TABLET, 'PAT-1');
    await patcher.type('Ground deep, mm', '3');
    await patcher.type('Laminate thick, mm', '6');
    await patcher.tap('button', 'Add material');
    await patcher.type('Lot or container: scan, or type', 'R-NONE');
    await patcher.type('How much', '0.2');
    await patcher.tap('button', 'Hand back for acceptance');
    await page.getByText('The service refused it').waitFor();
    await patcher.tap('link', 'See what waits');
    await page.getByText('1 was refused.').waitFor();
    await patcher.tap('button', 'Mend it');
    await page.locator('.st-refused input').first().fill('R-GOOD');
    await patcher.tap('button', 'Send it mended');
    await page.getByText('All sent').waitFor();
    const [{ repairs } = { repairs: 0 }] = await service.asOwner<{ repairs: number }>(
      `select count(*)::int as repairs from fact.repair r join fact.part t on t.id = r.part_id where t.number = '86-1-H'`,
    );
    // One of the story, and this.
    expect(repairs).toBe(2);
  });
});

describe('photos that are taken with no network', () => {
  afterEach(() => watched.close());

  it('are sent again when their answer is lost, and each is there once, byte for byte', async () => {
    const inspector = atTablet();
    await openTablet(`/station/bay/${OTHER}/defect`, 'TAB-H', 'INS-1');
    await page.locator('.touch-map').waitFor();
    await readyForNoNetwork(page);
    await inspector.touchHull(0.4, 0.6);
    const context = page.context();
    await context.setOffline(true);
    await inspector.tap('radio', 'Blister');
    await inspector.tap('radio', /^4$/);
    await inspector.tap('radio', /^M, medium$/);
    await inspector.type('Long, mm', '6');
    await inspector.photograph(1_200, 900);
    await inspector.photograph(900, 600);
    await inspector.tap('button', 'Save the defect');
    await page.getByText('3 wait to be sent.').waitFor();
    await page.reload();
    await page.getByText('3 wait to be sent.').waitFor();
    await page.close();

    const again = await context.newPage();
    // The service has the first photo, and the tablet does not hear of it.
    let tell: (status: number) => void = () => undefined;
    const lost = new Promise<number>((resolve) => {
      tell = resolve;
    });
    await again.route(
      '**/api/defects/*/photos',
      async (route) => {
        const status = (await route.fetch()).status();
        await route.abort();
        tell(status);
      },
      { times: 1 },
    );
    await again.goto(`${service.url}/station`);
    await again.getByText('3 wait to be sent.').waitFor();
    await context.setOffline(false);
    await again.getByText('2 wait to be sent.').waitFor({ timeout: 20_000 });
    expect(await lost).toBe(201);
    await again.close();

    const last = await context.newPage();
    await last.goto(`${service.url}/station`);
    await last.getByText('All sent').waitFor({ timeout: 20_000 });
    expect(await defectsOf(OTHER)).toMatchObject([
      { kind: 'air-bubble', photos: 0 },
      { kind: 'blister', photos: 2 },
    ]);
    const kept = await service.asOwner<{ sha256: string }>(
      `select p.original_sha256 as sha256 from fact.photo p join fact.defect d on d.root = p.defect_id
       join fact.part t on t.id = d.part_id where t.number = $1 order by 1`,
      [OTHER],
    );
    const shown = [await taken(1_200, 900), await taken(900, 600)];
    const hashes = shown.map((photo) => createHash('sha256').update(photo).digest('hex'));
    expect(kept.map(({ sha256 }) => sha256)).toEqual(hashes.sort());
  });
});
