import { afterAll, afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import type { CertificateView } from '@hull-record/contracts';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileOf, issued, releasedHull } from '../support/certificates.js';
import { readPages, solid } from '../support/read-pdf.js';
import { clearStage, close, open, page, service, setStageOf } from './stage.js';

let first: CertificateView;
let second: CertificateView;
let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'hull-record-page-'));
  await setStageOf(async (shop) => {
    await shop.open();
    await releasedHull(shop, '86-7');
    first = await issued(shop, '86-7');
    second = await issued(shop, '86-7');
  });
}, 120_000);
afterAll(async () => {
  await clearStage();
  rmSync(folder, { recursive: true });
});
afterEach(() => close());

const codeOf = async (certificate: CertificateView): Promise<string> =>
  /(?:[0-9A-Z]{5}){5}[0-9A-Z](?=Theanswer)/.exec(solid(await readPages(await fileOf(service, certificate))))?.[0] ?? '';

describe('the page that anybody checks a certificate on', () => {
  it('says of a scanned code, without a sign-in, that the paper is genuine and current', async () => {
    await open(`/c#${await codeOf(second)}`, {}, null);
    await page.getByText('Genuine and current.', { exact: true }).waitFor();
    expect(await page.getByRole('status').innerText()).toContain('86-7');
    const look = process.env['KEEP_CERTIFICATE'];
    if (look) await page.screenshot({ path: join(look, 'check.png'), fullPage: true });
  });

  it('says of a code that is typed that the issue was replaced, and of another that it is not known', async () => {
    await open('/c', {}, null);
    await page.getByRole('textbox', { name: 'Code' }).fill((await codeOf(first)).toLowerCase());
    await page.getByRole('button', { name: 'Check it' }).click();
    await page.getByText('Genuine, and replaced by a later issue.').waitFor();
    await page.getByText('The newest issue is 2.').waitFor();
    await page.getByRole('textbox', { name: 'Code' }).fill('00000 00000 00000 00000 00000 0');
    await page.getByRole('button', { name: 'Check it' }).click();
    await page.getByText('Not known.').waitFor();
    await page.getByText('Ask the builder.').waitFor();
  });

  it('tells a file as it was signed from one in which a byte was changed', async () => {
    const pdf = await fileOf(service, second);
    const [as, changed] = [join(folder, 'as.pdf'), join(folder, 'changed.pdf')];
    writeFileSync(as, pdf);
    pdf[500] = (pdf[500] ?? 0) ^ 1;
    writeFileSync(changed, pdf);
    await open('/c', {}, null);
    const choose = async (file: string): Promise<void> => {
      const chooser = page.waitForEvent('filechooser');
      await page.getByRole('button', { name: 'Choose a PDF' }).click();
      await (await chooser).setFiles(file);
    };
    await choose(as);
    await page.getByText('Genuine and current.', { exact: true }).waitFor();
    await choose(changed);
    await page.getByText('Not known.').waitFor();
  });

  it('says that an issue was withdrawn, once quality has withdrawn it on the page of the hull', async () => {
    await open('/hulls/86-7');
    await page.getByRole('heading', { name: 'Certificate' }).waitFor();
    await page.locator('summary', { hasText: 'Withdraw issue 2' }).click();
    await page.getByRole('textbox', { name: 'Reason' }).fill('Printed with the wrong model.');
    await page.getByRole('button', { name: 'Withdraw issue 2' }).last().click();
    await page.getByText('Withdrawn by the builder.').first().waitFor();
    const look = process.env['KEEP_CERTIFICATE'];
    if (look) await page.screenshot({ path: join(look, 'hull.png'), fullPage: true });
    await page.goto(`${service.url}/c#${await codeOf(second)}`);
    await page.getByText('Withdrawn by the builder.').waitFor();
  });
});
