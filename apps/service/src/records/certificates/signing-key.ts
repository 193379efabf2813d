import { P12Signer } from '@signpdf/signer-p12';
import { Signer as PdfSigner } from '@signpdf/utils';
import forge from 'node-forge';
import {
  createHash,
  createPrivateKey,
  generateKeyPair,
  type KeyObject,
  randomBytes,
  X509Certificate,
} from 'node:crypto';
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { ConfigWrong } from '../../platform/config/config-wrong.js';
import { readSecret, writeSecretOnce } from '../../platform/journal/key-ring.js';
import { signedData } from './signed-data.js';

/** A key with its X.509 certificate, and how it signs. */
export interface Signer {
  /** Signs a PDF as its library asks (PKCS #7 detached, SHA-256). */
  readonly pdf: PdfSigner;
  /** SHA-256 of the certificate in DER, in hexadecimal. */
  readonly fingerprint: string;
  /** From when until when the certificate is valid. */
  readonly validFrom: Date;
  readonly validTo: Date;
}

/** A file of the plant's own, in place of the one that is made. */
export interface OwnSigner {
  readonly file: string;
  readonly passphrase: string;
}

const FILE = 'certificates.p12';
const YEARS = 30;
const DAY_MS = 86_400_000;
const WHAT_TO_GIVE =
  'Name a PKCS #12 file with an RSA or P-256 key and its certificate, and set CERTIFICATE_KEY_PASSPHRASE to what opens it.';
/** The name of OpenSSL for the curve P-256. */
const P_256 = 'prime256v1';
/** Shorter RSA keys are not to sign any more (NIST SP 800-131A Rev. 2, 2019, section 3; from memory). */
const LEAST_RSA_BITS = 2048;

/** The key that signs the PDFs of certificates: self-signed and made at the first use, or the plant's own. */
export class SigningKey {
  constructor(
    private readonly folder: string,
    private readonly own: OwnSigner | null = null,
  ) {}

  /** @throws ConfigWrong for a file that is not there, that others can read, or that its passphrase does not open */
  async load(plant: string): Promise<Signer> {
    if (this.own) return openedOwn(this.own);
    const file = join(this.folder, FILE);
    if (!existsSync(file)) {
      mkdirSync(this.folder, { recursive: true, mode: 0o700 });
      writeSecretOnce(file, await selfSigned(plant));
    }
    return opened(file, '');
  }
}

const openedOwn = ({ file, passphrase }: OwnSigner): Signer => {
  try {
    return opened(file, passphrase);
  } catch (error) {
    const said = error instanceof Error ? error.message : '';
    throw new ConfigWrong(`CERTIFICATE_KEY: ${said.replace(/([^.?])$/, '$1.')} ${WHAT_TO_GIVE}`);
  }
};

const opened = (file: string, passphrase: string): Signer => {
  const p12 = readSecret(file);
  try {
    const held = forge.pkcs12.pkcs12FromAsn1(forge.asn1.fromDer(p12.toString('binary')), passphrase);
    const key = keyOf(held);
    const certificate = certificateOf(held, key);
    const fingerprint = createHash('sha256').update(certificate).digest('hex');
    const { validFrom, validTo } = new X509Certificate(certificate);
    const of = { fingerprint, validFrom: new Date(validFrom), validTo: new Date(validTo) };
    if (key.asymmetricKeyType === 'rsa') return { ...of, pdf: new P12Signer(p12, { passphrase }) };
    return { ...of, pdf: new EcSigner(key, certificate) };
  } catch (error) {
    throw new ConfigWrong(`${file}: cannot be opened as PKCS #12: ${error instanceof Error ? error.message : ''}`);
  }
};

/** Signs with a key on a curve, which the library of PDF signatures does not read. */
class EcSigner extends PdfSigner {
  constructor(
    private readonly key: KeyObject,
    private readonly certificate: Buffer,
  ) {
    super();
  }

  override async sign(pdf: Buffer, at: Date = new Date()): Promise<Buffer> {
    return signedData(pdf, this.key, this.certificate, at);
  }
}

/** What lies in a PKCS #12; of a key that is not RSA, and of its certificate, node-forge gives what it did not read. */
interface Bag {
  readonly key?: forge.pki.PrivateKey | null;
  readonly cert?: forge.pki.Certificate | null;
  readonly asn1?: forge.asn1.Asn1;
}

const bagsOf = (held: forge.pkcs12.Pkcs12Pfx, type: string): readonly Bag[] =>
  Object.values(held.getBags({ bagType: forge.pki.oids[type] as string })).flatMap((bags) => (bags ?? []) as Bag[]);

const derOf = (node: forge.asn1.Asn1): Buffer => Buffer.from(forge.asn1.toDer(node).getBytes(), 'binary');

const keyOf = (held: forge.pkcs12.Pkcs12Pfx): KeyObject => {
  const [bag] = [...bagsOf(held, 'pkcs8ShroudedKeyBag'), ...bagsOf(held, 'keyBag')];
  if (bag?.key) return longEnough(createPrivateKey(forge.pki.privateKeyToPem(bag.key)));
  const key = bag?.asn1 && createPrivateKey({ key: derOf(bag.asn1), format: 'der', type: 'pkcs8' });
  if (key?.asymmetricKeyType !== 'ec' || key.asymmetricKeyDetails?.namedCurve !== P_256)
    throw new Error('it holds no key that is RSA or on the curve P-256, and other kinds of key do not sign here');
  return key;
};

const longEnough = (key: KeyObject): KeyObject => {
  const bits = key.asymmetricKeyDetails?.modulusLength ?? 0;
  if (bits < LEAST_RSA_BITS)
    throw new Error(`its RSA key has ${bits} bits, and one of fewer than ${LEAST_RSA_BITS} can be forged`);
  return key;
};

/** The certificate of the key itself, in DER: those that issued it may lie beside it, in any order. */
const certificateOf = (held: forge.pkcs12.Pkcs12Pfx, key: KeyObject): Buffer => {
  const all = bagsOf(held, 'certBag').flatMap(({ cert, asn1 }) =>
    cert ? [derOf(forge.pki.certificateToAsn1(cert))] : asn1 ? [derOf(asn1)] : [],
  );
  const own = all.find((der) => new X509Certificate(der).checkPrivateKey(key));
  if (!own) throw new Error('it holds no certificate of its key');
  return own;
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
  // A day before, for the entry that it is made for was recorded before it, and for readers whose clock is behind.
  certificate.validity.notBefore = new Date(Date.now() - DAY_MS);
  certificate.validity.notAfter = new Date(Date.now() + YEARS * 365.25 * DAY_MS);
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
