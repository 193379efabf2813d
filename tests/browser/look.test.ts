import { beforeAll, afterAll, it } from '@jest/globals';
import { buildWeb, openPage, startBrowser, WEB_DIR } from '../support/browser.js';
import { recordStory } from '../support/page-story.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
let service: RunningService;
beforeAll(async () => {
  buildWeb();
  service = await startService({ webDir: WEB_DIR });
  await recordStory(await new Shop(service).open());
}, 120000);
afterAll(() => service.close());
it('looks', async () => {
  const browser = await startBrowser();
  for (const colorScheme of ['light', 'dark'] as const)
    for (const [w, ht] of [
      [1280, 800],
      [390, 844],
    ] as const) {
      const { page, complaints } = await openPage(browser, { colorScheme, viewport: { width: w, height: ht } });
      for (const [name, hash] of [
        ['home', ''],
        ['hull', '#/hulls/86-1'],
        ['hulls', '#/hulls'],
        ['lot', '#/lots/R-BAD'],
        ['lots', '#/lots'],
        ['tank', '#/lots/T1-2'],
        ['search', '#/search?for=86-1&hulls=86-1,86-2,86-3'],
        ['missing', '#/hulls/99'],
        ['new', '#/hulls/86-6'],
      ] as const) {
        await page.goto(`${service.url}/${hash}`);
        await page.waitForTimeout(900);
        await page.screenshot({ path: `/tmp/look/${name}-${colorScheme}-${w}.png`, fullPage: true });
      }
      console.log(complaints);
    }
  const { page } = await openPage(browser);
  await page.goto(`${service.url}/#/hulls/86-1`);
  await page.waitForTimeout(900);
  await page.getByRole('link', { name: 'lots at D1' }).click();
  await page.waitForTimeout(900);
  await page.screenshot({ path: `/tmp/look/defect.png`, fullPage: true });
  await browser.close();
}, 120000);
