import { afterAll, afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import type { OwnRepairs } from '@hull-record/contracts';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator } from 'playwright-core';
import sharp from 'sharp';
import { axeFindings } from '../support/web/axe.js';
import { comesTrue } from '../support/web/comes-true.js';
import { clearStage, close, open, page, service, setStageOf, watched } from './stage.js';

let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'hull-record-repairs-'));
  writeFileSync(
    join(folder, 'patch.png'),
    await sharp({ create: { width: 60, height: 40, channels: 3, background: '#a0b0c0' } })
      .png()
      .toBuffer(),
  );
  await setStageOf(async (shop) => {
    await shop.open();
    await shop.act('/api/people', { badge: 'D-NLM', name: 'Desk', roles: ['dealer'], dealer: 'NLM' });
    await shop.startHull('86-1');
    await shop.act('/api/hulls/86-1/life', { what: 'at dealer', dealer: 'NLM' });
  });
}, 120_000);
afterAll(async () => {
  await clearStage();
  rmSync(folder, { recursive: true });
});
afterEach(() => watched.close());

const asDealer = (path: string): Promise<void> => open(path, {}, 'D-NLM');
const repairs = async (): Promise<OwnRepairs> =>
  (await (
    await fetch(`${service.url}/api/own-hulls/86-1/outside-repairs`, { headers: await service.signedIn('D-NLM') })
  ).json()) as OwnRepairs;

describe('the dealer of a boat that was repaired outside the plant', () => {
  it('is told what is missing of an outside repair, at its field, and what was typed stays', async () => {
    await asDealer('/own-hulls/86-1');
    await page.getByText('No outside repair is on record for this hull.').waitFor();
    await page.locator('summary', { hasText: 'Report an outside repair' }).click();
    await page.getByText('A structural repair belongs to licensed or certified people.').waitFor();
    await page.getByLabel('What was done').fill('Ground out and laid up.');
    await page.getByLabel('Finished on').fill('2026-01-04');
    await page.getByRole('button', { name: 'Report it' }).click();
    await page.getByText('name a defect that it answers, or a spot').waitFor();
    expect(await page.getByLabel('What was done').inputValue()).toBe('Ground out and laid up.');
    expect(await page.locator('[name="at"]').getAttribute('aria-invalid')).toBe('true');
    await page.getByLabel('What it was', { exact: true }).selectOption('gouge');
    await page.getByRole('button', { name: 'Report it' }).click();
    await page.getByText('say where: a place on the shell or on the transom').waitFor();
    expect((await repairs()).repairs).toEqual([]);
  });

  it('reports an outside repair with a photo in seven fields and seven taps, and sees that it waits to be judged', async () => {
    await asDealer('/own-hulls/86-1');
    let [taps, fields] = [0, 0];
    const tap = async (what: Locator, at?: { x: number; y: number }): Promise<void> => {
      await what.click(at === undefined ? {} : { position: at });
      taps += 1;
    };
    const fill = async (label: string, value: string): Promise<void> => {
      await page.getByLabel(label, { exact: true }).fill(value);
      fields += 1;
    };
    await tap(page.locator('summary', { hasText: 'Report an outside repair' }));
    await tap(page.getByLabel('What it was', { exact: true }));
    await page.getByLabel('What it was', { exact: true }).selectOption('gouge');
    fields += 1;
    const map = page.locator('.touch-map .map').first();
    const { width = 0, height = 0 } = (await map.boundingBox()) ?? {};
    await tap(map, { x: width * 0.5, y: height * 0.3 });
    await page.locator('.where').waitFor();
    await fill('Finished on', '2026-01-04');
    await fill('Where, and by which workshop', 'Our yard, Calder Bay');
    await fill('Where this is known from', 'our work sheet 118');
    await fill('What was done', 'Ground out and laid up.');
    await fill('Materials', 'vinyl ester and mat of the yard');
    await page.waitForLoadState('networkidle');
    expect(await axeFindings(page)).toEqual([]);
    const look = process.env['KEEP_DEALER'];
    if (look) await page.screenshot({ path: join(look, 'report-repair.png'), fullPage: true });
    await tap(page.getByRole('button', { name: 'Report it' }));
    await page.getByText('Reported as R1 of 86-1-H.').waitFor();
    await page.getByText('The plant did not witness this.').first().waitFor();
    await page.getByText('not judged yet').waitFor();
    await tap(page.locator('summary', { hasText: 'Add a photo' }));
    const chooser = page.waitForEvent('filechooser');
    const section = page.getByRole('region', { name: 'Repairs done outside the plant' });
    await tap(section.getByLabel('Photo').first());
    await (await chooser).setFiles(join(folder, 'patch.png'));
    fields += 1;
    await tap(page.getByRole('button', { name: 'Add the photo' }));
    const shown = page.getByRole('img', { name: 'Photo of R1: finished' });
    await shown.waitFor();
    await comesTrue(page, '[...document.images].every((image) => image.naturalWidth > 0)');
    expect([taps, fields]).toEqual([7, 7]);
    expect(await repairs()).toMatchObject({
      repairs: [{ mark: 'R1', state: 'to be judged', defects: ['D1'], photos: [{ shows: 'finished' }] }],
      openDefects: [{ mark: 'D1', kind: 'gouge', state: 'repair to be accepted' }],
    });
    await page.waitForLoadState('networkidle');
    expect(await axeFindings(page)).toEqual([]);
    if (look) await page.screenshot({ path: join(look, 'repair.png'), fullPage: true });
    await close();
  });

  it('ticks the open defect that a second repair answers, and says in Spanish what it is', async () => {
    await open('/own-hulls/86-1', { locale: 'es-MX' }, 'D-NLM');
    await page.locator('summary', { hasText: 'Comunicar una reparación externa' }).click();
    await page.getByLabel(/^D1, /).check();
    await page.getByLabel('Terminada el').fill('2026-01-05');
    await page.getByLabel('Dónde, y en qué taller').fill('Otro varadero');
    await page.getByLabel('De dónde se sabe').fill('factura 7');
    await page.getByLabel('Qué se hizo', { exact: true }).fill('Pulido.');
    await page.getByRole('button', { name: 'Comunicarla' }).click();
    await page.getByText('Comunicada como R2 de 86-1-H.').waitFor();
    expect((await repairs()).repairs).toMatchObject([{ mark: 'R2', defects: ['D1'] }, { mark: 'R1' }]);
    await close();
  });

  it('is told when the repairs could not be read, and asks again', async () => {
    await asDealer('/own-hulls');
    await page.route('**/api/own-hulls/86-1/outside-repairs', (route) => route.abort());
    await page.getByRole('link', { name: '86-1', exact: true }).click();
    await page.getByText('the repairs done outside the plant').first().waitFor();
    await page.unroute('**/api/own-hulls/86-1/outside-repairs');
    await page.getByRole('button', { name: /again/i }).first().click();
    await page.getByText('R1 of 86-1-H, at Our yard, Calder Bay').waitFor();
  });
});
