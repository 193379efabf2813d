import { afterAll, describe, expect, it } from '@jest/globals';
import { chmodSync, copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { SigningKey } from '../../../apps/service/src/records/certificates/signing-key.js';

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

describe("a key of the plant's own that signs certificates", () => {
  it('is known by the certificate of the key, not by that of the authority that issued it', async () => {
    // As `openssl x509 -noout -fingerprint -sha256` prints it of the leaf.
    expect((await load(own('own-rsa.p12'))).fingerprint).toBe(
      '8143fa8dff0bd7639eff063ffaa2cb95b4cf1428c4baf8020dd98fb3956752cd',
    );
  });

  it('is refused with its reason: another kind of key, a wrong passphrase, a file that others can read', async () => {
    await expect(load(own('own-p256.p12'))).rejects.toThrow('holds no RSA key');
    await expect(load(own('own-rsa.p12'), 'wrong')).rejects.toThrow('cannot be opened as PKCS #12');
    await expect(load(own('own-rsa.p12', 0o644))).rejects.toThrow('others than its owner can read');
  });
});
