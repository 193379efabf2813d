import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { CertificateContent } from '@hull-record/contracts';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { KeyRing } from '../../apps/service/src/platform/journal/key-ring.js';
import { CertificatePage, draw } from '../../apps/service/src/records/certificates/draw.js';
import { signPdf } from '../../apps/service/src/records/certificates/sign-pdf.js';
import { SigningKey } from '../../apps/service/src/records/certificates/signing-key.js';
import { comparePrinted } from '../../apps/service/src/verify/certificate/compare-printed.js';
import { readPdf, solid } from '../../apps/service/src/verify/certificate/read-certificate.js';
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

interface Embedded {
  readonly content: { readonly result: { readonly content: CertificateContent } };
}

/** The address and the code that a page prints. */
const wherePrinted = (printed: string): { page: string; code: string } => {
  const [, page = '', code = ''] = /at(https?:\/\/\S+?)\/c([0-9A-Z-]{26,40})The/.exec(printed) ?? [];
  return { page, code };
};

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

  it('is broken when one printed value is another than the embedded one, and when one more is printed', async () => {
    const { printed, embedded } = await readPdf(pdf);
    const proof = JSON.parse(String(embedded.get('certificate-proof.json'))) as Embedded;
    const { content } = proof.content.result;
    expect(comparePrinted(content, printed)).toBeNull();
    const readings = content.parts[0]?.layers[0]?.readings ?? '';
    const figure = /\d/.exec(readings)?.[0] ?? '';
    const other = solid(readings.replace(figure, String((Number(figure) + 1) % 10)));
    expect(comparePrinted(content, printed.replace(solid(readings), other))).toContain(
      'does not print what is embedded',
    );
    const more = printed.replace(solid(readings), `${solid(readings)}void-free`);
    expect(comparePrinted(content, more)).toMatch(/prints what is not embedded.*void-free/);
    expect(comparePrinted(content, `${printed}Approved.`)).toContain('prints what is not embedded');
    expect(comparePrinted({ ...content, hin: 'TRZ99999A626' }, printed)).not.toBeNull();
    // The whole way: the same embedded content under a page that prints another day of release, signed by the plant.
    const { page, code } = wherePrinted(printed);
    const forged = await draw(
      { ...content, released: '1 Jan 2020' },
      new CertificatePage(page),
      code,
      embedded.get('certificate-proof.json') as Buffer,
      new Date(),
    );
    const signed = await signPdf(forged, await service.get(SigningKey).load('TARROW'), 'TARROW', new Date());
    const { is, words } = await verifyCertificate(signed, [key]);
    expect([is, words]).toEqual(['broken', expect.stringContaining('prints what is not embedded')]);
  });

  it('prints what is embedded however long it is, and whatever writing it is in', async () => {
    const { embedded, printed } = await readPdf(pdf);
    const proof = embedded.get('certificate-proof.json') as Buffer;
    const { content } = (JSON.parse(String(proof)) as Embedded).content.result;
    const long = 'vinyl ester resin with a name that has to be broken over lines, 450 g/m2 mat, ';
    const layer = { name: 'Skin coat כתום', materials: long.repeat(3), made: '5 Jan 2026', readings: '' };
    const filled: CertificateContent = {
      ...{ ...content, hin: 'TRZ00001A626', model: 'نموذج 86' },
      parts: [{ part: 'P-1', kind: 'hull molding', layers: [layer, { ...layer, readings: long }, layer] }],
      repaired: ['R1 of P-1: ' + long, 'R2 of P-1: ' + long],
      ...{ concessions: [], leftOut: ['2 more layers found no room; the build record has them.'] },
    };
    const { page, code } = wherePrinted(printed);
    const drawn = await readPdf(await draw(filled, new CertificatePage(page), code, proof, new Date()));
    expect(drawn.pages).toBe(1);
    expect(comparePrinted(filled, drawn.printed)).toBeNull();
    expect(comparePrinted({ ...filled, leftOut: [] }, drawn.printed)).toContain('2morelayers');
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
