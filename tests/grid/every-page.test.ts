import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { setTimeout as wait } from 'node:timers/promises';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { buildWeb, openPage, startBrowser, WEB_DIR } from '../support/browser.js';
import { startService, type RunningService } from '../support/service.js';
import { axeFindings } from '../support/web/axe.js';
import { ADDRESSES } from './addresses.js';
import { loadPlant, type Known } from './known.js';

const SCREENS = {
  'at a desk': { viewport: { width: 1280, height: 800 } },
  'on a tablet': { viewport: { width: 800, height: 1280 }, hasTouch: true },
  'on a phone': { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
};
const LANGUAGES = { English: 'en-US', Spanish: 'es-MX' };
const THEMES = ['light', 'dark', 'glare'] as const;

const GRID = Object.entries(SCREENS).flatMap(([screen, options]) =>
  Object.entries(LANGUAGES).flatMap(([language, locale]) =>
    THEMES.map((theme) => [screen, language, theme, { ...options, locale }] as const),
  ),
);

let service: RunningService;
let browser: Browser;
let known: Known;

beforeAll(async () => {
  buildWeb();
  service = await startService({ webDir: WEB_DIR });
  known = await loadPlant(service);
  browser = await startBrowser();
}, 600_000);
afterAll(async () => {
  await browser.close();
  await service.close();
});

const signIn = async (context: BrowserContext, badge: string | null): Promise<void> => {
  await context.clearCookies();
  if (badge === null) return;
  const [name = '', value = ''] = ((await service.signedIn(badge))['cookie'] ?? '').split('=');
  await context.addCookies([{ name, value, url: service.url }]);
};

/** Waits until a page says no more that something is on its way. */
const settled = async (page: Page): Promise<void> => {
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  await page.waitForLoadState('networkidle');
  for (const loading of await page.getByText(/^(Loading|Cargando) /).all()) await loading.waitFor({ state: 'hidden' });
  await wait(50);
};

/** What leaves the screen at the side, or covers more than its width. */
const TOO_WIDE = 'Math.max(0, document.documentElement.scrollWidth - innerWidth)';

describe.each(GRID)('%s, in %s, %s', (_screen, _language, theme, options) => {
  let page: Page;
  let complaints: readonly string[];
  let close: () => Promise<void>;
  beforeAll(async () => {
    ({ page, complaints, close } = await openPage(browser, options));
    await page.addInitScript(
      `localStorage.setItem('hull-record.preferences', JSON.stringify({ ...JSON.parse(localStorage.getItem('hull-record.preferences') ?? '{}'), theme: '${theme}' }))`,
    );
  });
  afterAll(() => close());

  it.each(ADDRESSES)('%s', async (_route, as, path) => {
    await signIn(page.context(), typeof as === 'function' ? as(known) : as);
    await page.goto(`${service.url}${typeof path === 'function' ? path(known) : path}`);
    await settled(page);
    expect({
      findings: await axeFindings(page),
      wider: await page.evaluate(TOO_WIDE),
      theme: await page.evaluate('document.documentElement.dataset.theme'),
      troubles: await page.locator('.trouble').allInnerTexts(),
    }).toEqual({ findings: [], wider: 0, theme, troubles: [] });
  });

  it('complained of nothing, but that a label leads nowhere', () => {
    expect(complaints.filter((each) => !each.includes('status of 400'))).toEqual([]);
  });
});

describe('the addresses', () => {
  it('are of every route of the app, and each leads to its own', async () => {
    const { page, close } = await openPage(browser);
    await page.goto(`${service.url}/settings`);
    await page.getByRole('heading', { level: 1 }).waitFor();
    const bare = (route: string): string => (route === '/' ? route : route.replace(/\/$/, ''));
    const routes = await page.evaluate<string[]>('Object.keys(globalThis.__TSR_ROUTER__.routesByPath)');
    const paths = ADDRESSES.map(([, , path]) => (typeof path === 'function' ? path(known) : path).split('?')[0]);
    const led = await page.evaluate<string[]>(
      `${JSON.stringify(paths)}.map((path) => globalThis.__TSR_ROUTER__.matchRoutes(path, {}).at(-1).fullPath)`,
    );
    expect(led.map(bare)).toEqual(ADDRESSES.map(([route]) => route));
    expect([...new Set(routes.map(bare))].sort()).toEqual(ADDRESSES.map(([route]) => route as string).sort());
    await close();
  });
});
