import { afterAll, afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import type { CertificateView, OwnClaim, OwnNews } from '@hull-record/contracts';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { axeFindings } from '../support/web/axe.js';
import { issued, releasedHull } from '../support/certificates.js';
import { clearStage, close, open, page, service, setStageOf } from './stage.js';

let folder: string;
let withdrawn: CertificateView;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'hull-record-dealer-'));
  writeFileSync(
    join(folder, 'plate.png'),
    await sharp({ create: { width: 60, height: 40, channels: 3, background: '#a0b0c0' } })
      .png()
      .toBuffer(),
  );
  await setStageOf(async (shop) => {
    await shop.open();
    await shop.act('/api/people', { badge: 'D-NLM', name: 'Desk', roles: ['dealer'], dealer: 'NLM' });
    for (const hull of ['86-1', '86-2']) {
      await releasedHull(shop, hull);
      await shop.act(`/api/hulls/${hull}/life`, { what: 'at dealer', dealer: 'NLM' });
    }
    await issued(shop, '86-1');
    withdrawn = await issued(shop, '86-2');
    await shop.act(`/api/certificates/${withdrawn.id}/withdrawals`, { reason: 'The model was printed wrong.' });
    const hold = await shop.act('/api/lots/86-1-R/holds', { kind: 'quality', reason: 'gel time' });
    const decision = { decision: 'substantial risk of injury', discoveredOn: '2026-01-02', decidedBy: 'ADMIN' };
    await shop.act(`/api/holds/${hold}/duty-decisions`, { ...decision, why: 'a bond' });
    const contents = { defect: 'The bond of the grid may be weak.', hazard: 'The grid may come loose.' };
    const more = { measures: 'Bring the boat back; the bond is renewed.', undertaking: 'Free of charge.' };
    const from = { manufacturer: 'Invented Boats', address: '1 Slip Road', make: 'TS' };
    await shop.act(`/api/holds/${hold}/notices`, { code: 'N-7', contents: { ...contents, ...more, ...from } });
    const recipients = [{ hull: '86-1', dealer: 'NLM', proof: 'no. 1' }];
    await shop.act('/api/notices/N-7/mailings', { class: 'certified mail', recipients });
  });
}, 120_000);
afterAll(async () => {
  await clearStage();
  rmSync(folder, { recursive: true });
});
afterEach(() => close());

const asDealer = (path: string): Promise<void> => open(path, {}, 'D-NLM');
const claims = async (): Promise<OwnClaim[]> =>
  (await (
    await fetch(`${service.url}/api/own-hulls/86-1/claims`, { headers: await service.signedIn('D-NLM') })
  ).json()) as OwnClaim[];

describe('the dealer', () => {
  it('gets the certificate of an own hull in one tap', async () => {
    await asDealer('/own-hulls');
    const link = page.getByRole('link', { name: 'Issue 1 of C-000001' });
    const address = (await link.getAttribute('href')) ?? '';
    const answer = await page.request.get(`${service.url}${address}`);
    expect((await answer.body()).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('opens the certificate from the page of the hull, which says whether it still holds', async () => {
    await asDealer('/own-hulls');
    await page.getByRole('link', { name: '86-1', exact: true }).click();
    const link = page.getByRole('link', { name: 'Issue 1 of C-000001' });
    const answer = await page.request.get(`${service.url}${(await link.getAttribute('href')) ?? ''}`);
    expect([answer.status(), answer.headers()['content-type']]).toEqual([200, 'application/pdf']);
    await asDealer('/own-hulls/86-2');
    await page.getByRole('link', { name: 'Issue 1 of C-000002' }).waitFor();
    await page.getByText('Ask the builder.').first().waitFor();
  });

  it('reads a notice with what is wrong and what to do, and acknowledges it; it stays to be read', async () => {
    await asDealer('/own-hulls');
    for (const words of ['Notice N-7', 'The grid may come loose.', 'Bring the boat back; the bond is renewed.'])
      await page.getByText(words).first().waitFor();
    await page.getByRole('button', { name: 'Acknowledge, hull 86-1' }).click();
    await page.getByRole('button', { name: 'Acknowledge, hull 86-1' }).waitFor({ state: 'detached' });
    const told = async (): Promise<OwnNews[]> =>
      (await (
        await fetch(`${service.url}/api/own-news`, { headers: await service.signedIn('D-NLM') })
      ).json()) as OwnNews[];
    expect((await told()).find(({ notice }) => notice === 'N-7')?.acknowledgedAt).not.toBeNull();
    expect((await told()).find(({ certificate }) => certificate !== null)?.acknowledgedAt).toBeNull();
    await page.locator('summary', { hasText: '1 acknowledged before' }).click();
    await page.getByText('The grid may come loose.').first().waitFor();
  });

  it('is told of a certificate that was withdrawn, and acknowledges it in one tap', async () => {
    await asDealer('/own-hulls');
    await page.getByText('Certificate C-000002, issue 1, is withdrawn').waitFor();
    await page.getByText('Withdrawn by the builder. Ask the builder.').waitFor();
    await page.waitForLoadState('networkidle');
    expect(await axeFindings(page)).toEqual([]);
    const look = process.env['KEEP_DEALER'];
    if (look) await page.screenshot({ path: join(look, 'own-hulls.png'), fullPage: true });
    await page.getByRole('button', { name: 'Acknowledge, hull 86-2' }).click();
    await page.getByText('Nothing new since you last acknowledged.').waitFor();
    await page.getByText('2 acknowledged before').waitFor();
  });

  it('files a claim in three fields and two taps, and adds the picture that is asked for', async () => {
    await asDealer('/own-hulls/86-1');
    await page.getByText('No claim was filed for this hull.').waitFor();
    await page.locator('summary', { hasText: 'File a claim' }).click();
    await page.getByLabel('Kind of defect').selectOption('blister');
    await page.getByLabel('Reported on').fill('2026-01-05');
    await page.getByRole('textbox', { name: 'Symptoms' }).fill('blisters on the port side');
    await page.getByRole('button', { name: 'File it' }).click();
    await page.getByText('Filed as C1.').waitFor();
    const chooser = page.waitForEvent('filechooser');
    await page.getByLabel('Photo').first().click();
    await (await chooser).setFiles(join(folder, 'plate.png'));
    await page.getByRole('button', { name: 'Add the picture: HIN plate' }).click();
    await page.getByRole('button', { name: 'Add the picture: whole side' }).waitFor();
    expect(await claims()).toMatchObject([{ mark: 'C1', photos: ['HIN plate'], decision: null }]);
    await page.waitForLoadState('networkidle');
    expect(await axeFindings(page)).toEqual([]);
    const look = process.env['KEEP_DEALER'];
    if (look) await page.screenshot({ path: join(look, 'own-hull.png'), fullPage: true });
  });
});
