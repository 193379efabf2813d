import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { KeyRing } from '../../apps/service/src/platform/journal/key-ring.js';
import { signPdf } from '../../apps/service/src/records/certificates/sign-pdf.js';
import { SigningKey } from '../../apps/service/src/records/certificates/signing-key.js';
import { verifyCertificate } from '../../apps/service/src/verify/certificate/verify-certificate.js';
import { runVerify } from '../../apps/service/src/verify/command.js';
import { fileOf, issued, releasedHull } from '../support/certificates.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
let pdf: Buffer;
let key: string;
let folder: string;
beforeAll(async () => {
  service = await startService();
  const shop = await new Shop(service).open();
  pdf = await fileOf(service, await issued(shop, await releasedHull(shop, 'OFF-1')));
  key = new KeyRing(join(service.dataDir, 'keys')).newest().keyId;
  folder = mkdtempSync(join(tmpdir(), 'hull-record-off-line-'));
}, 120_000);
afterAll(async () => {
  await service.close();
  rmSync(folder, { recursive: true });
});

describe('a certificate looked at with no network and no database', () => {
  it('is genuine to who trusts the key of the plant, and consistent with itself to others', async () => {
    expect(await verifyCertificate(pdf, [key])).toMatchObject({ is: 'genuine' });
    const unknown = {
      is: 'signer not known',
      words: expect.stringContaining('Consistent with itself, signer not known'),
    };
    expect(await verifyCertificate(pdf, [])).toMatchObject(unknown);
    expect(await verifyCertificate(pdf, ['0'.repeat(64)])).toMatchObject(unknown);
  });

  it('is broken by a byte that was changed anywhere', async () => {
    for (let at = 10; at < pdf.length; at += Math.floor(pdf.length / 25)) {
      const changed = Buffer.from(pdf);
      changed[at] = (changed[at] ?? 0) ^ 1;
      expect([at, (await verifyCertificate(changed, [key])).is]).toEqual([at, 'broken']);
    }
    expect(await verifyCertificate(Buffer.concat([pdf, Buffer.from('\n')]), [key])).toMatchObject({ is: 'broken' });
  });

  it('is broken when it was signed anew by somebody else', async () => {
    const unsigned = pdf.subarray(0, pdf.toString('latin1').indexOf('%%EOF') + 6);
    const other = await new SigningKey(join(folder, 'other')).load('TARROW');
    const forged = await signPdf(Buffer.from(unsigned), other, 'TARROW', new Date());
    const { is, words } = await verifyCertificate(forged, [key]);
    expect([is, words]).toEqual([
      'broken',
      expect.stringContaining('another certificate than the one that the journal'),
    ]);
  });

  it('is told of by the command', async () => {
    const file = join(folder, 'certificate.pdf');
    writeFileSync(file, pdf);
    const said: string[] = [];
    expect(await runVerify([file, '--trust', key], {}, (line) => said.push(line))).toBe(0);
    expect(said.join(' ')).toMatch(/^Genuine as it was issued/);
    writeFileSync(file, pdf.subarray(1));
    expect(await runVerify([file], {}, () => undefined)).toBe(1);
  });
});
