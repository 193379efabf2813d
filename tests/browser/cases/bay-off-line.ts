import { afterEach, describe, expect, it } from '@jest/globals';
import { open, page, service, watched } from '../stage.js';
import { openTablet, readyForNoNetwork } from '../tablets.js';
import { atTablet, defectsOf, TABLET } from './at-bay.js';

const PART = '86-3-H';

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
