import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { CERTIFICATE_STATEMENT, type CertificateContent, type CertificateView } from '@hull-record/contracts';
import { verifyBundle } from '@hull-record/evidence';
import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { KeyRing } from '../../apps/service/src/platform/journal/key-ring.js';
import { ask, check, fileOf, issued, proofIn, releasedHull, signatureIn } from '../support/certificates.js';
import { readPages, solid } from '../support/read-pdf.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let first: CertificateView;
let pdf: Buffer;
let printed: string;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await releasedHull(shop, 'CERT-1');
  first = await issued(shop, 'CERT-1');
  pdf = await fileOf(service, first);
  printed = solid(await readPages(pdf));
  const look = process.env['KEEP_CERTIFICATE'];
  if (look) writeFileSync(join(look, 'certificate.pdf'), pdf);
}, 120_000);
afterAll(() => service.close());

const codeOf = async (file: Buffer): Promise<string> =>
  /(?:[0-9A-Z]{5}){5}[0-9A-Z](?=Theanswer)/.exec(solid(await readPages(file)))?.[0] ?? '';

const contentIn = async (file: Buffer): Promise<CertificateContent> => {
  const bundle = JSON.parse(await proofIn(file)) as { content: { result: { content: CertificateContent } } };
  return bundle.content.result.content;
};

describe('a certificate', () => {
  it('is one page that says what was recorded, and what it is not, and nothing that it must not say', async () => {
    expect(await readPages(pdf)).toHaveLength(1);
    expect(printed).toContain(CERTIFICATE_STATEMENT.replace(/\s/g, ''));
    for (const said of ['HullCERT-1', 'C-000001,issue1', 'Gelcoat', 'wetfilm', '3spots'])
      expect(printed).toContain(said.replace(/\s/g, ''));
    const own = printed.replace(CERTIFICATE_STATEMENT.replace(/\s/g, ''), '');
    expect(own).not.toMatch(/certified|approved|void-free|meets/i);
  });

  it('is given out as it was signed, and not drawn again', async () => {
    expect(createHash('sha256').update(pdf).digest('hex')).toBe(first.sha256);
    expect((await fileOf(service, first)).equals(pdf)).toBe(true);
    const rows = await service.asOwner<{ sha256: string }>('select sha256 from fact.certificate_file');
    expect(rows).toEqual([{ sha256: first.sha256 }]);
    expect(await service.asOwner('select from work.certificate_code')).toEqual([]);
  });

  it('carries what it prints, with a proof that leads to a head of the plant', async () => {
    const [key] = new KeyRing(join(service.dataDir, 'keys')).all();
    const proof = await proofIn(pdf);
    expect(verifyBundle(proof, [{ plant: 'TARROW', keyId: key?.keyId ?? '' }])).toMatchObject({ is: 'genuine' });
    expect(verifyBundle(proof, [])).toMatchObject({ is: 'signer not known' });
    const content = await contentIn(pdf);
    const said = [content.hull, content.model, content.released, content.issuedOn, ...content.repaired];
    for (const text of [
      ...said,
      ...content.parts.flatMap(({ layers }) => layers.flatMap((each) => Object.values(each))),
    ])
      expect(printed).toContain(text.replace(/\s/g, ''));
  });

  it('is signed over all its bytes, as a program of other makers finds', () => {
    const { signed, cms, whole } = signatureIn(pdf);
    expect(whole).toBe(true);
    const files = { cms, signed };
    const verify = (folder: string): string[] => [
      ...['cms', '-verify', '-binary', '-inform', 'DER', '-noverify', '-out', join(folder, 'out')],
      ...['-in', join(folder, 'cms'), '-content', join(folder, 'signed')],
    ];
    const found = ask('openssl', verify, files);
    expect(found).toMatchObject({ status: 0, out: expect.stringMatching(/Verification successful/i) });
    const changed = Buffer.from(signed);
    changed[1_000] = (changed[1_000] ?? 0) ^ 1;
    expect(ask('openssl', verify, { cms, signed: changed })?.status).not.toBe(0);
  });

  it('is valid to a reader of PDF, and broken by any byte that is changed, where the reader is installed', () => {
    const verify = (file: Buffer) => ask('pdfsig', (folder) => ['-nocert', join(folder, 'a.pdf')], { 'a.pdf': file });
    const found = verify(pdf);
    if (found === null) return;
    expect(found.out).toContain('Signature is Valid.');
    expect(found.out).toContain('Total document signed');
    for (const at of [20, Math.floor(pdf.length / 3), Math.floor(pdf.length / 2), pdf.length - 40]) {
      const changed = Buffer.from(pdf);
      changed[at] = (changed[at] ?? 0) ^ 1;
      const said = verify(changed)?.out ?? '';
      expect([at, said.includes('Signature is Valid.') && said.includes('Total document signed')]).toEqual([at, false]);
    }
    const clean = ask('qpdf', (folder) => ['--check', join(folder, 'a.pdf')], { 'a.pdf': pdf });
    expect(clean?.out ?? 'No syntax or stream encoding errors found').toContain('No syntax or stream encoding errors');
  });
});

describe('anybody who asks', () => {
  it('is told that it is current, by the code as it is printed, with its number, or by the file', async () => {
    const code = await codeOf(pdf);
    const current = {
      is: 'current',
      newestIssue: 1,
      certificate: expect.objectContaining({ number: 'C-000001', issue: 1, hull: 'CERT-1' }),
    };
    for (const body of [{ code }, { code: code.toLowerCase(), number: 'c-000001' }, { sha256: first.sha256 }])
      expect(await check(service, body)).toEqual({ status: 200, body: current });
  });

  it('is told nothing by a wrong code, a wrong number or another file', async () => {
    const code = await codeOf(pdf);
    const other = createHash('sha256').update('other').digest('hex');
    for (const body of [{ code: `${code.slice(1)}0` }, { code, number: 'C-000002' }, { sha256: other }]) {
      const answer = await check(service, body);
      expect(answer.body).toEqual({ is: 'not known', certificate: null, newestIssue: null });
    }
    expect((await check(service, {})).status).toBe(400);
  });

  it('is told that an issue was replaced, and that one was withdrawn', async () => {
    const hull = await releasedHull(shop, 'CERT-2');
    const [one, two] = [await issued(shop, hull), await issued(shop, hull)];
    expect([two.number, two.issue]).toEqual([one.number, 2]);
    expect((await check(service, { sha256: one.sha256 })).body).toMatchObject({ is: 'replaced', newestIssue: 2 });
    await shop.act(`/api/certificates/${two.id}/withdrawals`, { reason: 'The model was printed wrong.' });
    const withdrawn = await check(service, { code: await codeOf(await fileOf(service, two)) });
    expect(withdrawn.body).toMatchObject({ is: 'withdrawn', certificate: { issue: 2 } });
    expect(JSON.stringify(withdrawn.body)).not.toContain('printed wrong');
    const again = await shop.post(`/api/certificates/${two.id}/withdrawals`, shop.envelope({ reason: 'Again.' }));
    expect(again).toMatchObject({ status: 409, body: { type: '/problems/withdrawn-already' } });
  });

  it('is slowed down when many are asked from one place', async () => {
    const answers = await Promise.all(Array.from({ length: 40 }, () => check(service, { sha256: first.sha256 })));
    expect(answers.filter(({ status }) => status === 429).length).toBeGreaterThan(5);
  });
});

describe('an issue', () => {
  it('waits for the release, and for what is on hold; what was issued stays as it is', async () => {
    await shop.startHull('CERT-3');
    const early = await shop.post('/api/hulls/CERT-3/certificates', shop.envelope());
    expect(early).toMatchObject({ status: 409, body: { type: '/problems/not-released' } });
    const before = await shop.read<CertificateView[]>('/api/hulls/CERT-1/certificates');
    await shop.act('/api/lots/CERT-1-R/holds', { kind: 'quality', reason: 'A drum is in doubt.' });
    const held = await shop.post('/api/hulls/CERT-1/certificates', shop.envelope());
    expect(held).toMatchObject({ status: 409, body: { type: '/problems/certificate-suspended' } });
    expect(await shop.read('/api/hulls/CERT-1/certificates')).toEqual(before);
  });
});
