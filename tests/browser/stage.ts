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

/** What a stage may have that others have not: words to start the browser with, another folder of the web app. */
interface Props {
  readonly browserArgs?: readonly string[];
  readonly webDir?: string;
}

export const setStage = (): Promise<void> => setStageWith({});

export const setStageWith = (props: Props): Promise<void> =>
  setStageOf(async (shop) => recordStory(await shop.open()), props);

/** A stage with what is recorded first, instead of the story. */
export const setStageOf = async (record: (shop: Shop) => Promise<unknown>, props: Props = {}): Promise<void> => {
  buildWeb();
  service = await startService({ webDir: props.webDir ?? WEB_DIR });
  await record(new Shop(service));
  browser = await startBrowser(props.browserArgs);
};

export const clearStage = async (): Promise<void> => {
  await browser?.close();
  standing.clear();
  await service?.close();
};

/** Opens a page of its own, on an address of the app, where somebody is signed in; with null, nobody is. */
export const open = async (
  path: string,
  options: BrowserContextOptions = {},
  as: string | null = 'ADMIN',
): Promise<void> => {
  if (browser === undefined) throw new Error('The stage is not set.');
  watched = await openPage(browser, options);
  page = watched.page;
  // Shorter than a test may take: what was waited for is named.
  page.setDefaultTimeout(15_000);
  if (as !== null) await page.context().addCookies([await cookieOf(as)]);
  await page.goto(`${service.url}${path}`);
};

/** Pages that stay open for the addresses that follow: their browser has the files of the app from then on. */
const standing = new Map<string, Watched>();

/** Opens an address in the page of this name, which is opened with the options when there is none yet. */
export const openIn = async (
  name: string,
  path: string,
  options: BrowserContextOptions = {},
  as: string | null = 'ADMIN',
): Promise<void> => {
  const before = standing.get(name);
  if (before === undefined) {
    await open(path, options, as);
    standing.set(name, watched);
    return;
  }
  watched = before;
  page = watched.page;
  await page.goto(`${service.url}${path}`);
};

const cookieOf = async (badge: string): Promise<{ name: string; value: string; url: string }> => {
  const [name = '', value = ''] = ((await service.signedIn(badge))['cookie'] ?? '').split('=');
  return { name, value, url: service.url };
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
