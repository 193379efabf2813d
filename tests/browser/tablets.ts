import { expect } from '@jest/globals';
import type { Page } from 'playwright-core';
import { enrol } from '../support/devices.js';
import type { RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
import { comesTrue } from '../support/web/comes-true.js';
import { open, page, service } from './stage.js';

export const TABLET = { viewport: { width: 800, height: 1280 }, hasTouch: true };

const asCookie = (cookie: string) => {
  const [name = '', value = ''] = cookie.split('=');
  return { name, value, url: service.url };
};

/** The credential of each tablet of a service: it is enrolled once, since enrolling anew ends who had it. */
const enrolled = new WeakMap<RunningService, Map<string, string>>();

const credentialOf = async (code: string): Promise<string> => {
  const own = enrolled.get(service) ?? new Map<string, string>();
  enrolled.set(service, own);
  const known = own.get(code);
  if (known !== undefined) return known;
  const shop = new Shop(service);
  await shop.act('/api/devices', { code, description: `Tablet ${code}`, ratedForClassifiedArea: false });
  const { cookie } = await enrol(shop, code);
  own.set(code, cookie);
  return cookie;
};

/** Opens the station on an enrolled tablet that somebody took over with a PIN; the tablet is registered when it is new. */
export const openTablet = async (path: string, code: string, badge: string): Promise<Page> => {
  const cookie = await credentialOf(code);
  await open('/health/live', TABLET, null);
  const session = (await service.signedIn(badge, code))['cookie'] ?? '';
  await page.context().addCookies([asCookie(cookie), asCookie(session)]);
  await page.goto(`${service.url}${path}`);
  await page.getByRole('link', { name: badge, exact: true }).waitFor();
  return page;
};

/** Waits until the tablet has the files of the app, then loads the page under its worker. */
export const readyForNoNetwork = async (on: Page): Promise<void> => {
  await on.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
  await on.reload();
  await comesTrue(on, 'navigator.serviceWorker.controller !== null');
};

/** Touches and fields of a task, counted as a person does them. */
export class Hands {
  taps = 0;
  fields = 0;

  constructor(private readonly on: Page) {}

  async tap(role: 'link' | 'button', name: string | RegExp): Promise<void> {
    this.taps += 1;
    await this.on.getByRole(role, { name }).first().tap();
  }

  async type(label: string, text: string): Promise<void> {
    this.fields += 1;
    await this.on.getByLabel(label).fill(text);
    await this.on.keyboard.press('Enter');
  }

  /** Says what it took, and holds it to a bound. */
  atMost(task: string, taps: number, fields: number): void {
    console.log(`${task}: ${this.taps} touches, ${this.fields} fields`);
    expect([task, this.taps <= taps, this.fields <= fields]).toEqual([task, true, true]);
  }
}

/** So many rows of a table of facts, by a condition. */
export const rowsWhere = async (table: string, where: string, values: readonly string[]): Promise<number> => {
  const filled = values.reduce((sql, value, i) => sql.replaceAll(`$${i + 1}`, `'${value}'`), where);
  const [row] = await service.asOwner<{ n: number }>(`select count(*)::int as n from fact.${table} t where ${filled}`);
  return row?.n ?? 0;
};
