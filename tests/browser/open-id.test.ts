import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Browser, Page } from 'playwright-core';
import { buildWeb, startBrowser, WEB_DIR } from '../support/browser.js';
import { openPlantWithOffice, type PlantWithOffice } from '../support/open-id/plant-with-office.js';

let plant: PlantWithOffice;
let browser: Browser | undefined;
beforeAll(async () => {
  buildWeb();
  // To a browser localhost and 127.0.0.1 are two sites: strict cookies of one do not go along from the other.
  plant = await openPlantWithOffice({ SITE: 'localhost' }, { webDir: WEB_DIR });
  browser = await startBrowser();
}, 120_000);
afterAll(async () => {
  await browser?.close();
  await plant.close();
});

/** A page that asks nobody but this machine. */
const newPage = async (): Promise<Page> => {
  const context = await (browser as Browser).newContext();
  await context.route(/^https?:\/\/(?!127\.0\.0\.1|localhost)/, (route) => route.abort());
  return context.newPage();
};

const signInThere = async (page: Page): Promise<void> => {
  await page.locator('input[name=login]').fill('ada');
  await page.locator('input[name=password]').fill('any');
  await page.locator('button[type=submit]').click();
  await page.getByRole('button', { name: 'Continue' }).click();
};

/** What the service tells a page that it showed itself. */
const sessionSeenBy = (page: Page): Promise<{ person: { badge: string } | null }> =>
  page.evaluate("fetch('/api/session').then((answer) => answer.json())");

describe('signing in by the office in a browser', () => {
  it('ends on the first page, signed in, though the browser comes from another site', async () => {
    const page = await newPage();
    const violations: string[] = [];
    page.on('console', (message) => {
      if (/Content Security Policy/.test(message.text())) violations.push(message.text());
    });
    await page.goto(`${plant.service.url}/api/open-id/start`, { waitUntil: 'domcontentloaded' });
    expect(new URL(page.url()).hostname).toBe('localhost');
    await signInThere(page);
    await page.waitForURL(/^[^?]*\/(#.*)?$/, { waitUntil: 'domcontentloaded' });
    expect(new URL(page.url()).origin).toBe(plant.service.url);
    // The page itself was asked for with the cookie: it is strict, and the step to it began on this site.
    expect(await sessionSeenBy(page)).toMatchObject({ person: { badge: 'QUA-01' } });
    const cookies = await page.context().cookies(plant.service.url);
    const ours = cookies.filter(({ name }) => name.startsWith('hull-record'));
    expect(ours).toMatchObject([{ name: 'hull-record-session', httpOnly: true, sameSite: 'Strict' }]);
    expect(violations).toEqual([]);
    await page.context().close();
  });

  it('sends the strict cookie on the step from the landing page', async () => {
    const page = await newPage();
    const sent: (string | undefined)[] = [];
    plant.service.server.on('request', (request: { url?: string; headers: { cookie?: string } }) => {
      if (request.url === '/') sent.push(request.headers.cookie);
    });
    await page.goto(`${plant.service.url}/api/open-id/start`, { waitUntil: 'domcontentloaded' });
    await signInThere(page);
    await page.waitForURL(/^[^?]*\/(#.*)?$/, { waitUntil: 'domcontentloaded' });
    expect(sent).toEqual([expect.stringContaining('hull-record-session=')]);
    await page.context().close();
  });
});
