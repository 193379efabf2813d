import { afterAll, describe, expect, it } from '@jest/globals';
import { createHash, verify, X509Certificate } from 'node:crypto';
import { chmodSync, copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import forge from 'node-forge';
import PDFDocument from 'pdfkit';
import { toldAtStart, whyOutOfTime } from '../../../apps/service/src/records/certificates/out-of-time.js';
import { signPdf } from '../../../apps/service/src/records/certificates/sign-pdf.js';
import { SigningKey } from '../../../apps/service/src/records/certificates/signing-key.js';
import { checkCms } from '../../../apps/service/src/verify/certificate/check-cms.js';
import { signatureIn } from '../../../apps/service/src/verify/certificate/signature-in.js';
import { down, readDer } from '../../support/read-der.js';

const folder = mkdtempSync(join(tmpdir(), 'hull-record-own-key-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A file of invented names, made by OpenSSL 3 with its usual settings and the passphrase `quay`. */
const own = (name: string, mode = 0o600): string => {
  const file = join(folder, `${mode.toString(8)}-${name}`);
  copyFileSync(`tests/support/keys/${name}`, file);
  chmodSync(file, mode);
  return file;
};
const load = (file: string, passphrase = 'quay') => new SigningKey(folder, { file, passphrase }).load('MAIN');

/** A page with nothing on it. */
const aPdf = (): Promise<Buffer> =>
  new Promise((resolve) => {
    const chunks: Buffer[] = [];
    const paper = new PDFDocument({ pdfVersion: '1.7' });
    paper.on('data', (chunk: Buffer) => chunks.push(chunk));
    paper.on('end', () => resolve(Buffer.concat(chunks)));
    paper.end();
  });

describe("a key of the plant's own that signs certificates", () => {
  it('is known by the certificate of the key, not by that of the authority that issued it', async () => {
    // As `openssl x509 -noout -fingerprint -sha256` prints it of the leaf.
    expect((await load(own('own-rsa.p12'))).fingerprint).toBe(
      '8143fa8dff0bd7639eff063ffaa2cb95b4cf1428c4baf8020dd98fb3956752cd',
    );
  });

  it('signs on the curve P-256 too, as ECDSA with SHA-256 over the file and the signed attributes', async () => {
    const signer = await load(own('own-p256.p12'));
    // As `openssl x509 -noout -fingerprint -sha256` prints it.
    expect(signer.fingerprint).toBe('dc0eef466ff55d59323db54c25e2adc978e89872008d966399d1aa754edafe7b');
    const signed = await signPdf(await aPdf(), signer, 'MAIN', new Date('2026-05-14T09:20:00Z'));
    const found = signatureIn(signed);
    if (typeof found === 'string') throw new Error(found);
    const { cms, signed: content } = found;
    const [certificates, signers] = [down(cms, 1, 0, 3), down(cms, 1, 0, 4)];
    const certificate = new X509Certificate(readDer(certificates.content)[0]?.whole ?? Buffer.alloc(0));
    expect(certificate.publicKey.asymmetricKeyDetails).toEqual({ namedCurve: 'prime256v1' });
    expect(createHash('sha256').update(certificate.raw).digest('hex')).toBe(signer.fingerprint);
    const [, , , attributes, algorithm, signature] = readDer(down(signers.whole, 0).content);
    // 1.2.840.10045.4.3.2, ecdsa-with-SHA256, without parameters (RFC 5758, section 3.2).
    expect(algorithm?.content.toString('hex')).toBe('06082a8648ce3d040302');
    const asSet = Buffer.from(attributes?.whole ?? Buffer.alloc(0));
    asSet[0] = 0x31;
    expect(verify('sha256', asSet, certificate.publicKey, signature?.content ?? Buffer.alloc(0))).toBe(true);
    const digest = createHash('sha256').update(content).digest('hex');
    expect(attributes?.content.toString('hex')).toContain(digest);
    const inOrder = readDer(asSet.subarray(2)).map(({ whole }) => whole);
    expect([...inOrder].sort(Buffer.compare)).toEqual(inOrder);
    expect(checkCms(cms, content)).toEqual({ fingerprint: signer.fingerprint });
    const other = Buffer.from(content);
    other[20] = (other[20] ?? 0) ^ 1;
    expect(checkCms(cms, other)).toBe('The file is not what was signed: a byte was changed.');
    const torn = Buffer.from(cms);
    torn[torn.length - 1] = (torn[torn.length - 1] ?? 0) ^ 1;
    expect(checkCms(torn, content)).toBe('The signature is not one of the key of its certificate.');
  });

  it('is told as a signature that cannot be read or does not fit when a byte of its certificate is another', async () => {
    const { fingerprint, pdf } = await load(own('own-p256.p12'));
    const content = Buffer.from('what is signed');
    const cms = await pdf.sign(content, new Date('2026-05-14T09:20:00Z'));
    expect(checkCms(cms, content)).toEqual({ fingerprint });
    const certificate = down(cms, 1, 0, 3, 0);
    const from = cms.indexOf(certificate.whole);
    for (let at = from; at < from + certificate.whole.length; at++) {
      const torn = Buffer.from(cms);
      torn[at] = (torn[at] ?? 0) ^ 0x80;
      expect([at, checkCms(torn, content)]).not.toEqual([at, { fingerprint }]);
    }
  });

  it('is checked by its own certificate when that of the authority lies beside it in the signature', async () => {
    const signer = await load(own('own-rsa.p12'));
    const found = signatureIn(await signPdf(await aPdf(), signer, 'MAIN', new Date('2026-05-14T09:20:00Z')));
    if (typeof found === 'string') throw new Error(found);
    expect(readDer(down(found.cms, 1, 0, 3).content)).toHaveLength(2);
    expect(checkCms(found.cms, found.signed)).toEqual({ fingerprint: signer.fingerprint });
  });

  it('is refused with its reason: another kind of key, a wrong passphrase, a file that others can read', async () => {
    await expect(load(own('own-p384.p12'))).rejects.toThrow('holds no key that is RSA or on the curve P-256');
    await expect(load(own('own-rsa.p12'), 'wrong')).rejects.toThrow('cannot be opened as PKCS #12');
    await expect(load(own('own-rsa.p12'), 'wrong')).rejects.toThrow(
      /^CERTIFICATE_KEY: .* set CERTIFICATE_KEY_PASSPHRASE/,
    );
    await expect(load(own('own-p384.p12'))).rejects.toThrow('do not sign here. Name a PKCS #12 file');
    await expect(load(join(folder, 'none.p12'))).rejects.toThrow(/^CERTIFICATE_KEY: .*none\.p12/);
    await expect(load(own('own-rsa.p12', 0o644))).rejects.toThrow('others than its owner can read');
  });

  it('is refused when it is an RSA key of fewer than 2048 bits', async () => {
    const keys = forge.pki.rsa.generateKeyPair({ bits: 1024 });
    const certificate = forge.pki.createCertificate();
    certificate.publicKey = keys.publicKey;
    certificate.validity.notAfter = new Date('2099-01-01');
    certificate.sign(keys.privateKey, forge.md.sha256.create());
    const p12 = forge.pkcs12.toPkcs12Asn1(keys.privateKey, [certificate], 'quay', { algorithm: '3des' });
    const file = join(folder, 'short.p12');
    writeFileSync(file, Buffer.from(forge.asn1.toDer(p12).getBytes(), 'binary'), { mode: 0o600 });
    await expect(load(file)).rejects.toThrow(/^CERTIFICATE_KEY: .*1024 bits, and one of fewer than 2048 can be forged/);
  });

  it('says from when until when its certificate is valid, and why nothing is signed outside of that', async () => {
    const { validFrom, validTo } = await load(own('own-rsa.p12'));
    expect(validFrom < validTo).toBe(true);
    const own2026 = { validFrom: new Date('2026-01-01T00:00:00Z'), validTo: new Date('2026-12-31T00:00:00Z') };
    expect(whyOutOfTime(own2026, new Date('2026-06-01'))).toBeNull();
    expect(whyOutOfTime(own2026, new Date('2025-12-31'))).toMatch(/valid from 2026-01-01 on\. .*CERTIFICATE_KEY/);
    expect(whyOutOfTime(own2026, new Date('2027-01-01'))).toMatch(/was valid until 2026-12-31\. .*CERTIFICATE_KEY/);
    expect(toldAtStart(own2026, new Date('2026-10-01'))).toBeNull();
    expect(toldAtStart(own2026, new Date('2026-11-15'))).toMatch(/^The certificate .* is valid until 2026-12-31/);
    expect(toldAtStart(own2026, new Date('2027-01-01'))).toMatch(/^No certificate of a hull can be issued\./);
  });
});
