import forge from 'node-forge';
import { createHash, generateKeyPair, randomBytes } from 'node:crypto';
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { ConfigWrong } from '../../platform/config/config-wrong.js';
import { readSecret, writeSecretOnce } from '../../platform/journal/key-ring.js';

/** A key with its X.509 certificate as PKCS #12 (RFC 7292), and what opens it. */
export interface Signer {
  readonly p12: Buffer;
  readonly passphrase: string;
  /** SHA-256 of the certificate in DER, in hexadecimal. */
  readonly fingerprint: string;
}

/** A file of the plant's own, in place of the one that is made. */
export interface OwnSigner {
  readonly file: string;
  readonly passphrase: string;
}

const FILE = 'certificates.p12';
const YEARS = 30;

/** The key that signs the PDFs of certificates: self-signed and made at the first use, or the plant's own. */
export class SigningKey {
  constructor(
    private readonly folder: string,
    private readonly own: OwnSigner | null = null,
  ) {}

  /** @throws ConfigWrong for a file that others can read, or that its passphrase does not open */
  async load(plant: string): Promise<Signer> {
    if (this.own) return opened(this.own.file, this.own.passphrase);
    const file = join(this.folder, FILE);
    if (!existsSync(file)) {
      mkdirSync(this.folder, { recursive: true, mode: 0o700 });
      writeSecretOnce(file, await selfSigned(plant));
    }
    return opened(file, '');
  }
}

const opened = (file: string, passphrase: string): Signer => {
  const p12 = readSecret(file);
  try {
    const held = forge.pkcs12.pkcs12FromAsn1(forge.asn1.fromDer(p12.toString('binary')), passphrase);
    const der = forge.asn1.toDer(forge.pki.certificateToAsn1(certificateOf(held))).getBytes();
    return { p12, passphrase, fingerprint: createHash('sha256').update(der, 'binary').digest('hex') };
  } catch (error) {
    throw new ConfigWrong(`${file}: cannot be opened as PKCS #12: ${error instanceof Error ? error.message : ''}`);
  }
};

const bagsOf = (held: forge.pkcs12.Pkcs12Pfx, type: string): readonly forge.pkcs12.Bag[] =>
  Object.values(held.getBags({ bagType: forge.pki.oids[type] as string })).flatMap((bags) => bags ?? []);

/** The certificate of the key itself: those that issued it may lie beside it, in any order. */
const certificateOf = (held: forge.pkcs12.Pkcs12Pfx): forge.pki.Certificate => {
  const [key] = [...bagsOf(held, 'pkcs8ShroudedKeyBag'), ...bagsOf(held, 'keyBag')].flatMap((bag) => bag.key ?? []);
  if (!key) throw new Error('it holds no RSA key, and other kinds of key do not sign here');
  const own = bagsOf(held, 'certBag').find(
    ({ cert }) =>
      cert !== undefined && (cert.publicKey as forge.pki.rsa.PublicKey).n.equals((key as forge.pki.rsa.PrivateKey).n),
  );
  if (!own?.cert) throw new Error('it holds no certificate of its key');
  return own.cert;
};

/** A new key of 3072 bits with a certificate that it signs itself: it says the same signer, not who that is. */
const selfSigned = async (plant: string): Promise<Buffer> => {
  const { privateKey } = await promisify(generateKeyPair)('rsa', {
    modulusLength: 3072,
    privateKeyEncoding: { type: 'pkcs8', format: 'pem' },
    publicKeyEncoding: { type: 'spki', format: 'pem' },
  });
  const key = forge.pki.privateKeyFromPem(privateKey);
  const certificate = forge.pki.createCertificate();
  certificate.publicKey = forge.pki.setRsaPublicKey(key.n, key.e);
  // Positive, as RFC 5280 asks of a serial number.
  certificate.serialNumber = `01${randomBytes(15).toString('hex')}`;
  certificate.validity.notBefore = new Date();
  certificate.validity.notAfter = new Date(Date.now() + YEARS * 365.25 * 86_400_000);
  const name = [
    { name: 'commonName', value: `Hull Record, plant ${plant}` },
    { name: 'organizationalUnitName', value: 'certificates of hulls' },
  ];
  certificate.setSubject(name);
  certificate.setIssuer(name);
  certificate.setExtensions([
    { name: 'basicConstraints', cA: false, critical: true },
    { name: 'keyUsage', digitalSignature: true, nonRepudiation: true, critical: true },
  ]);
  certificate.sign(key, forge.md.sha256.create());
  const p12 = forge.pkcs12.toPkcs12Asn1(key, [certificate], '', { algorithm: '3des' });
  return Buffer.from(forge.asn1.toDer(p12).getBytes(), 'binary');
};
