import { afterAll, afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import type { OwnerFile } from '@hull-record/contracts';
import { readFileSync } from 'node:fs';
import type { Locator } from 'playwright-core';
import sharp from 'sharp';
import { noisy } from '../support/photos.js';
import { FILED } from '../support/write-samples-claims.js';
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

  it('leads to texts and photos of the hull: a name is worded anew, a face blacked out', async () => {
    const shop = new Shop(service);
    const claim = await shop.act('/api/hulls/86-9/claims', { ...FILED, symptoms: 'Invented Owner saw blisters' });
    const photo = await noisy(160, 90).jpeg().toBuffer();
    const sent = await shop.postPhoto(`/api/claims/${claim}/photos`, shop.envelope({ shows: 'whole side' }), photo);
    await open(`/owners/${owner}`);
    await page.getByRole('link', { name: 'Texts and photos of this hull' }).click();
    await page.getByText('Invented Owner saw blisters').waitFor();
    const look = process.env['KEEP_REDACTIONS'];
    if (look) await page.screenshot({ path: `${look}-before.png`, fullPage: true });
    const wording = fold('Symptoms of claim C1');
    await wording.locator('summary').click();
    await wording.getByRole('textbox', { name: 'Shown in its place' }).fill('Blisters were seen');
    await wording.getByRole('textbox', { name: 'Why it is redacted' }).fill('named somebody');
    await wording.getByRole('button', { name: 'Give it another wording' }).click();
    await wording.getByRole('button', { name: 'Yes, record it' }).click();
    await page.getByText('Blisters were seen [redacted on').waitFor();
    await page.getByText('Redacted. The original is erased; its commitment stays.').waitFor();

    const picture = page.locator('.area-picker');
    await picture.scrollIntoViewIfNeeded();
    const box = await picture.boundingBox();
    if (box === null) throw new Error('The photo is not seen.');
    await page.mouse.move(box.x + box.width * 0.2, box.y + box.height * 0.2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.5, box.y + box.height * 0.6, { steps: 4 });
    await page.mouse.up();
    await page.getByText('From the left 20 %, from the top 20 %, 30 % wide, 40 % high').waitFor();
    // The same without a drag.
    await fold('Give an area in figures').locator('summary').click();
    for (const [name, percent] of [
      ['From the left, %', '80'],
      ['From the top, %', '0'],
      ['Width, %', '20'],
      ['Height, %', '50'],
    ] as const)
      await page.getByRole('spinbutton', { name }).fill(percent);
    await page.getByRole('button', { name: 'Add the area' }).click();
    const blacking = fold('Black out');
    await blacking.locator('summary').click();
    await blacking.getByRole('textbox', { name: 'Why it is redacted' }).fill('shows a face');
    await blacking.getByRole('button', { name: 'Black out' }).click();
    await blacking.getByRole('button', { name: 'Yes, record it' }).click();
    await page.getByText('Redacted by').nth(1).waitFor();
    await page.reload();
    await page.getByText('Redacted by').nth(1).waitFor();
    await page.waitForLoadState('networkidle');
    expect(await axeFindings(page)).toEqual([]);
    if (look) await page.screenshot({ path: `${look}-after.png`, fullPage: true });
    const headers = await service.signedIn();
    const shown = await fetch(`${service.url}/api/photos/${sent.body.id}`, { headers });
    const jpeg = Buffer.from(await shown.arrayBuffer());
    for (const [left, top] of [
      [50, 30],
      [140, 10],
    ] as const) {
      const spot = await sharp(jpeg).extract({ left, top, width: 4, height: 4 }).raw().toBuffer();
      expect(Math.max(...spot)).toBeLessThan(24);
    }
    await open(`/claims/${claim}`);
    await page.getByText('Blisters were seen [redacted on').waitFor();
    await page.getByText('Redacted', { exact: false }).last().waitFor();
  });

  it('is for warranty and the administrator alone', async () => {
    const headers = await service.signedIn('INS-1');
    expect((await fetch(`${service.url}/api/owners`, { headers })).status).toBe(403);
  });
});
