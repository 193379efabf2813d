import { afterEach, describe, expect, it } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { open, page, watched } from '../stage.js';
import { PAGES } from './every-page.js';

/** Routes that need records of their own, each with the file of this folder that holds its page to the checker. */
const ELSEWHERE = {
  '/map': '../map.test.ts',
  '/trace': '../trace.test.ts',
  '/trace/lots/$lot': '../trace.test.ts',
  '/trace/hulls/$number': '../trace.test.ts',
  '/defects/$defect': 'every-page.ts',
  '/holds': '../holds.test.ts',
  '/holds/$hold': '../holds.test.ts',
  '/notices/$notice': '../holds.test.ts',
  '/claims/$claim': '../claims-and-cases.test.ts',
  '/cases/$case': '../claims-and-cases.test.ts',
  '/owners/$owner': '../owners.test.ts',
  '/own-hulls': '../dealer.test.ts',
  '/own-hulls/$number': '../dealer.test.ts',
  '/station': 'station-start.ts',
  '/station/take-over': 'station-start.ts',
  '/station/outbox': 'station-start.ts',
  '/station/layer': 'station-tasks.ts',
  '/station/readings': 'station-tasks.ts',
  '/station/sign': 'station-tasks.ts',
  '/station/confirm': 'station-tasks.ts',
  '/station/bay': 'bay-screens.ts',
  '/station/bay/$part': 'bay-screens.ts',
  '/station/bay/$part/defect': 'bay-screens.ts',
  '/station/bay/$part/repair': 'bay-screens.ts',
  '/station/bay/$part/touch-up': 'bay-screens.ts',
  '/station/bay/$part/judge/$mark': 'bay-screens.ts',
  '/station/bay/$part/answer/$mark': 'bay-screens.ts',
} as const;

/** The router of the page that is open, as the library leaves it to be looked at. */
const ROUTER = 'globalThis.__TSR_ROUTER__';
const bare = (route: string): string => (route === '/' ? route : route.replace(/\/$/, ''));

describe('a route of the app', () => {
  afterEach(() => watched.close());

  it('is not forgotten: each of the router is among the addresses that the checker is held to', async () => {
    await open('/settings');
    await page.getByRole('heading', { name: 'Units' }).waitFor();
    const routes = await page.evaluate<string[]>(`Object.keys(${ROUTER}.routesByPath)`);
    const addresses = JSON.stringify(PAGES.map(([address]) => address.split('?')[0]));
    const visited = await page.evaluate<string[]>(
      `${addresses}.map((path) => ${ROUTER}.matchRoutes(path, {}).at(-1).fullPath)`,
    );
    const known = new Set([...visited, ...Object.keys(ELSEWHERE)].map(bare));
    expect(routes.length).toBeGreaterThan(50);
    expect([...new Set(routes.map(bare))].filter((route) => !known.has(route))).toEqual([]);
    expect(Object.keys(ELSEWHERE).filter((route) => !routes.map(bare).includes(route))).toEqual([]);
  });

  it.each([...new Set(Object.values(ELSEWHERE))])('that is left to %s is held to it there', (file) => {
    expect(/axeFindings\(page\)/.test(readFileSync(new URL(file, import.meta.url), 'utf8'))).toBe(true);
  });
});
