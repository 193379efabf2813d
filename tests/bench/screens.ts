import { createServer } from 'node:http';
import { readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import type { AddressInfo } from 'node:net';
import type { Page } from 'playwright-core';
import { buildWeb, openPage, startBrowser, WEB_DIR } from '../support/browser.js';
import { listOfHulls, manyDefects, SKIN, wideTrace } from './screens-data.js';

/**
 * Measures how long the screens hold up the browser with as much as they may be asked to show: 5,000 defects on the hull
 * map, 2,000 lots and hulls in a trace, 10,000 hulls in a list: `npm run bench:screens`. Prints the longest task of each act; machines differ.
 */
const DIST = join(WEB_DIR, 'dist');
const TYPES: Readonly<Record<string, string>> = {
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};

/** Serves the built page and a list of hulls; what else it asks of the service is answered below, without one. */
const serve = () =>
  createServer((request, response) => {
    const { pathname: path, searchParams } = new URL(request.url ?? '/', 'http://localhost');
    if (path === '/api/hulls') {
      response.setHeader('content-type', 'application/json');
      return response.end(JSON.stringify(listOfHulls(HULLS, Number(searchParams.get('cursor') ?? 0), 50)));
    }
    const file = /^\/(assets|fonts)\//.test(path) || path === '/mark.svg' ? path : '/index.html';
    response.setHeader('content-type', TYPES[extname(file)] ?? (file.endsWith('.html') ? 'text/html' : 'font/woff2'));
    return response.end(readFileSync(join(DIST, file)));
  });

const HULLS = 10_000;
const PERSON = { badge: 'QUA-1', name: 'Somebody', roles: ['quality'] };

const answer = async (page: Page): Promise<void> => {
  const answers: readonly (readonly [RegExp, unknown])[] = [
    [/\/api\/session$/, { person: PERSON, device: 'DESK', csrf: 'x', openId: null }],
    [
      /\/api\/models$/,
      [{ id: '1', code: 'TS86', name: 'TS 86', requiredParts: [], skins: { 'hull molding': SKIN }, schedules: [] }],
    ],
    [/\/api\/(molds|defect-kinds)$/, []],
    [/\/defect-map/, manyDefects(5_000)],
    [/\/api\/models\/TS86\/defects/, { items: [], next: null, recomputing: null }],
    [/\/api\/lots\/R-1\/trace/, wideTrace(2_000)],
  ];
  await page.route('**/api/**', (route) => {
    const found = answers.find(([path]) => path.test(new URL(route.request().url()).pathname));
    if (new URL(route.request().url()).pathname === '/api/hulls') return route.continue();
    return route.fulfill(found ? { json: found[1] } : { status: 404, json: { detail: 'not of this bench' } });
  });
};

/** Asks for the next page of the list as soon as one is shown, until there is none: what drives the browser would be slower. */
const SHOW_ALL = `(async () => {
  const said = () => document.querySelector('main .more [role=status]')?.textContent;
  for (let more; (more = [...document.querySelectorAll('main .more button')].at(-1)) && /^Show more/.test(more.textContent);) {
    const before = said();
    more.click();
    while (said() === before) await new Promise((again) => setTimeout(again, 5));
  }
})()`;

/** Does something and tells the longest task that the page did meanwhile, ms. */
const measured = async (page: Page, what: string, work: () => Promise<unknown>): Promise<void> => {
  await page.evaluate('window.longest = 0');
  const from = performance.now();
  await work();
  await page.waitForTimeout(400);
  const longest = await page.evaluate<number>('window.longest');
  const took = performance.now() - from - 400;
  console.log(
    `${what.padEnd(46)} ${took.toFixed(0).padStart(6)} ms, longest task ${longest.toFixed(0).padStart(4)} ms`,
  );
};

const nodes = (page: Page): Promise<number> => page.evaluate('document.querySelectorAll("main *").length');

/** A page whose long tasks are watched. A task under 50 ms is not reported; what is not reported stays 0. */
const watchedPage = async (): Promise<Page> => {
  const { page } = await openPage(browser, { viewport: { width: 1280, height: 800 } });
  await page.addInitScript(
    'window.longest = 0; new PerformanceObserver((list) => { for (const e of list.getEntries()) window.longest = Math.max(window.longest, e.duration) }).observe({ type: "longtask" })',
  );
  await answer(page);
  return page;
};

buildWeb();
const server = serve().listen(0, '127.0.0.1');
const browser = await startBrowser();
try {
  const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const page = await watchedPage();

  await page.goto(`${url}/map`);
  await page.getByText('5,000 defects').first().waitFor();
  await page.waitForTimeout(500);
  const drawing = page.locator('.board svg');
  await measured(page, 'map of 5,000 defects: enlarged by the wheel', async () => {
    await drawing.hover();
    for (let i = 0; i < 10; i += 1) await page.mouse.wheel(0, -100);
  });
  await measured(page, 'map of 5,000 defects: moved by a drag', async () => {
    const box = await drawing.boundingBox();
    if (box === null) return;
    await page.mouse.move(box.x + 300, box.y + 200);
    await page.mouse.down();
    for (let i = 0; i < 20; i += 1) await page.mouse.move(box.x + 300 - i * 8, box.y + 200 - i * 4);
    await page.mouse.up();
  });
  await measured(page, 'map of 5,000 defects: moved by keys', async () => {
    await page.locator('.board').focus();
    for (let i = 0; i < 10; i += 1) await page.keyboard.press('ArrowRight');
  });
  console.log(`map: ${await nodes(page)} nodes`);

  await page.goto(`${url}/trace/lots/R-1`);
  await page.getByText('Lot R-1 is in').first().waitFor();
  await page.waitForTimeout(500);
  await measured(page, 'trace of 2,000 nodes: picked by keys', async () => {
    await page.locator('.trace').focus();
    for (const key of ['ArrowRight', 'ArrowRight', 'ArrowDown', 'ArrowRight', 'Escape']) {
      await page.keyboard.press(key);
      await page.waitForTimeout(100);
    }
  });
  await measured(page, 'trace of 2,000 nodes: scrolled', () =>
    page.evaluate("document.querySelector('.trace').scrollTo({ top: 4000 })"),
  );
  console.log(`trace: ${await nodes(page)} nodes`);

  await measured(page, 'map of 5,000 defects: opened', async () => {
    await page.getByRole('link', { name: 'Map' }).click();
    await page.getByText('5,000 defects').first().waitFor();
  });
  await measured(page, 'trace of 2,000 nodes: opened', async () => {
    await page.goBack();
    await page.getByText('Lot R-1 is in').first().waitFor();
  });

  const list = await watchedPage();
  await list.goto(`${url}/hulls`);
  await list.locator('main .more button').waitFor();
  const first = await nodes(list);
  await measured(list, 'list of 10,000 hulls: shown page by page', () => list.evaluate(SHOW_ALL));
  await list.getByText(/^All hulls: 10,?000\./).waitFor();
  console.log(`list: ${first} nodes at first, ${await nodes(list)} once 10,000 hulls were shown`);
  await measured(list, 'list of 10,000 hulls: scrolled', async () => {
    for (let i = 0; i < 10; i += 1) await list.mouse.wheel(0, i % 2 === 0 ? -1_500 : 1_500);
  });
  await measured(list, 'list of 10,000 hulls: gone back by four pages', async () => {
    for (let i = 0; i < 4; i += 1) await list.getByRole('button', { name: 'Show earlier hulls' }).click();
  });
} finally {
  await browser.close();
  server.close();
}
