import { afterAll, afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import type { OwnerFile } from '@hull-record/contracts';
import { readFileSync } from 'node:fs';
import type { Locator } from 'playwright-core';
import { axeFindings } from '../support/web/axe.js';
import { Shop } from '../support/shop.js';
import { clearStage, close, open, page, service, setStageOf } from './stage.js';

let owner: string;
beforeAll(async () => {
  await setStageOf(async (shop) => {
    await shop.open();
    await shop.startHull('86-9');
    owner = await shop.act('/api/hulls/86-9/owners', {
      what: 'first purchaser',
      owner: { name: 'Invented Owner', address: '1 Quay Street', phone: '555 0100' },
    });
  });
}, 120_000);
afterAll(() => clearStage());
afterEach(() => close());

const file = (): Promise<OwnerFile> => new Shop(service).read<OwnerFile>(`/api/owners/${owner}`);
const fold = (name: string): Locator =>
  page
    .locator('details')
    .filter({ has: page.locator('summary', { hasText: name }) })
    .last();
/** Unfolds a form, gives the reason, and sends it; what cannot be undone is confirmed. */
const record = async (name: string, button = name, sure = false): Promise<void> => {
  const form = fold(name);
  await form.locator('summary').click();
  await form.getByRole('textbox', { name: 'Reason' }).fill('by letter, file 12');
  await form.getByRole('button', { name: button }).click();
  if (sure) await form.getByRole('button', { name: 'Yes, record it' }).click();
};

describe('the page of owners', () => {
  it('leads from the list to what is on record of one, which is given out as a file', async () => {
    await open('/owners');
    await page.getByRole('link', { name: 'Invented Owner' }).click();
    await page.getByText('1 Quay Street').waitFor();
    const download = page.waitForEvent('download');
    await page.getByRole('link', { name: 'As a file (JSON)' }).click();
    const given = JSON.parse(readFileSync(await (await download).path(), 'utf8')) as OwnerFile;
    expect(given.detail).toEqual({ name: 'Invented Owner', address: '1 Quay Street', phone: '555 0100' });
  });

  it('narrows under a legal hold, says what is not kept any more, and erases when it has ended', async () => {
    await open(`/owners/${owner}`);
    await record('Place a legal hold');
    await page.getByText('Legal hold: by letter, file 12').waitFor();
    await record('Erase it', 'Narrow it', true);
    await page.getByText('No longer kept: phone.').waitFor();
    await page.getByText('only what a notice by mail needs').waitFor();
    await page.reload();
    await page.getByText('only what a notice by mail needs').waitFor();
    await page.waitForLoadState('networkidle');
    expect(await axeFindings(page)).toEqual([]);
    const look = process.env['KEEP_OWNERS'];
    if (look) await page.screenshot({ path: look, fullPage: true });
    expect((await file()).detail).toEqual({ name: 'Invented Owner', address: '1 Quay Street' });
    await record('End it', 'End it', true);
    await page.getByText('nothing asks for it').waitFor();
    await page.reload();
    await record('Erase it', 'Erase it', true);
    await page.getByText('Nobody can say from this record any more').waitFor();
    expect(await file()).toMatchObject({ state: 'erased', detail: null });
  });

  it('is for warranty and the administrator alone', async () => {
    const headers = await service.signedIn('INS-1');
    expect((await fetch(`${service.url}/api/owners`, { headers })).status).toBe(403);
  });
});
