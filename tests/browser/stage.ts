import { expect } from '@jest/globals';
import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';
import { buildWeb, openPage, startBrowser, WEB_DIR, type Watched } from '../support/browser.js';
import { recordStory } from '../support/page-story.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let browser: Browser | undefined;

/** The service that every case looks at, and the page of the case that runs. One browser serves them all. */
export let service: RunningService;
export let watched: Watched;
export let page: Page;

export const setStage = async (): Promise<void> => {
  buildWeb();
  service = await startService({ webDir: WEB_DIR });
  await recordStory(await new Shop(service).open());
  browser = await startBrowser();
};

export const clearStage = async (): Promise<void> => {
  await browser?.close();
  await service?.close();
};

/** Opens a page of its own, on an address of the app. */
export const open = async (path: string, options: BrowserContextOptions = {}): Promise<void> => {
  if (browser === undefined) throw new Error('The stage is not set.');
  watched = await openPage(browser, options);
  page = watched.page;
  await page.goto(`${service.url}${path}`);
};

/** Closes it; a page that wrote an error or broke the security policy fails. */
export const close = async (): Promise<void> => {
  await watched.close();
  expect(watched.complaints).toEqual([]);
};

/** The rows of a table, without its head. */
export const rowsOf = (caption: string): Locator =>
  page
    .getByRole('table', { name: caption })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader') });
