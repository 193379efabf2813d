import { beforeAll, describe, it } from '@jest/globals';
import { Shop } from '../../support/shop.js';
import { seeNotRead } from '../not-read.js';
import { page, service } from '../stage.js';

const HULL = '/own-hulls/86-2';

/** Requests that `failing.ts` has not: who asks, at which page, the path that fails, and what is not read. */
const REQUESTS = [
  ['ADMIN', '/equipment/GUN-1', '**/api/guns/GUN-1', 'gun GUN-1'],
  ['ADMIN', '/owners/NONE', '**/api/owners/NONE', 'the owner'],
  ['ADMIN', '/quality/release?hull=86-1', '**/api/hulls/86-1', 'Release of hull 86-1'],
  ['ADMIN', '/claims/new?hull=86-1', '**/api/parts/86-1-H', 'part 86-1-H'],
  ['LAM-1', '/station', '**/api/day-sheet', 'the day sheet'],
  ['LAM-1', '/station/confirm', '**/api/unproved-entries', 'the entries that wait for a word'],
  ['LAM-1', '/station/bay', '**/api/hulls?**', 'hulls'],
  ['LAM-1', '/station/bay/86-1-H', '**/api/parts/86-1-H', 'the part 86-1-H'],
  ['DLR-1', '/own-hulls', '**/api/own-hulls?**', 'hulls'],
  ['DLR-1', '/own-hulls', '**/api/own-news', 'what the builder told you'],
  ['DLR-1', HULL, '**/api/own-hulls/86-2', 'hull 86-2'],
  ['DLR-1', HULL, '**/api/own-hulls/86-2/claims', 'the claims'],
  ['DLR-1', HULL, '**/api/own-hulls/86-2/outside-repairs', 'the repairs done outside the plant'],
] as const;

/** Requests that a page makes when something is chosen: what is done first. */
const CHOSEN = [
  [
    ['LAM-1', '/station/bay/86-1-H/defect', '**/api/flaw-limits', 'the limits by which it is judged at once'],
    () => page.locator('label').filter({ hasText: 'Blister' }).first().click(),
  ],
  [
    ['ADMIN', '/store/mix', '**/api/materials/*/dose?**', 'the figures'],
    async () => {
      await page.getByLabel('Resin, gel coat or putty').selectOption('RES-VE');
      await page.getByLabel('Catalyst', { exact: true }).selectOption('MEKP');
      await page.getByLabel('To be catalysed, kg').fill('10');
      await page.getByLabel('Temperature of resin and shop').fill('20');
      await page.getByRole('button', { name: 'Work it out' }).click();
    },
  ],
] as const;

describe('a request that fails', () => {
  beforeAll(async () => {
    const shop = new Shop(service);
    await shop.act('/api/people', { badge: 'DLR-1', name: 'Desk', roles: ['dealer'], dealer: 'NLM' });
    await shop.act('/api/equipment', { code: 'GUN-1', kind: 'gun', description: 'Chopper gun' });
  });

  it.each(REQUESTS)('of %s at %s, %s, is said to be: %s', async (as, address, path, what) => {
    await seeNotRead(address, path, what, as);
  });

  it.each(CHOSEN)('is said of what is chosen: %j', async ([as, address, path, what], choose) => {
    await seeNotRead(address, path, what, as, choose);
  });
});
