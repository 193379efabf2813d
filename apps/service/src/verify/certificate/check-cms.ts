import forge from 'node-forge';
import { createHash, type KeyObject, verify, X509Certificate } from 'node:crypto';
import { nameOfCertificate } from '../../platform/certificate-name.js';

const MESSAGE_DIGEST = '1.2.840.113549.1.9.4';
const { CONTEXT_SPECIFIC, UNIVERSAL } = forge.asn1.Class;
const { SET } = forge.asn1.Type;

type Node = forge.asn1.Asn1;

/** What is read of a signature: its one signer, and the certificates that lie beside it, in DER. */
interface Captured {
  readonly certificates: readonly Buffer[];
  readonly named: Buffer;
  readonly digestAlgorithm: string;
  readonly attributes: readonly Node[];
  readonly signature: Buffer;
}

/**
 * Checks a detached signature (RFC 5652, section 5.4; SHA-256 with RSA, or with ECDSA on P-256) by the certificate in
 * it of who signed.
 *
 * @returns SHA-256 of that certificate in DER, in hexadecimal; or a sentence that says what does not fit
 */
export const checkCms = (cms: Buffer, signed: Buffer): { readonly fingerprint: string } | string => {
  try {
    return checked(captured(forge.asn1.fromDer(cms.toString('binary'))), signed);
  } catch {
    // Also a certificate in it that is none, or a key that is none: they are read as far as they are needed.
    return 'The signature cannot be read.';
  }
};

const checked = (read: Captured, signed: Buffer): ReturnType<typeof checkCms> => {
  const { attributes, signature, digestAlgorithm } = read;
  const own = read.certificates.filter((der) => nameIn(forge.asn1.fromDer(der.toString('binary'))).equals(read.named));
  const [certificate] = own;
  if (!certificate || own.length !== 1) return 'The signature has not one certificate of who signed.';
  if (digestAlgorithm !== forge.pki.oids['sha256']) return 'The signature is not by SHA-256.';
  const digest = createHash('sha256').update(signed).digest();
  if (!digestIn(attributes)?.equals(digest)) return 'The file is not what was signed: a byte was changed.';
  const key = new X509Certificate(certificate).publicKey;
  if (!isKnown(key)) return 'The key of its certificate is neither RSA nor on the curve P-256.';
  const set = derOf(forge.asn1.create(UNIVERSAL, SET, true, [...attributes]));
  if (!verify('sha256', set, key, signature)) return 'The signature is not one of the key of its certificate.';
  return { fingerprint: createHash('sha256').update(certificate).digest('hex') };
};

const derOf = (node: Node): Buffer => Buffer.from(forge.asn1.toDer(node).getBytes(), 'binary');
const within = (node: Node | undefined): readonly Node[] => (node?.value ?? []) as Node[];
const isTagged = (tag: number) => (node: Node) => node.tagClass === CONTEXT_SPECIFIC && node.type === tag;

const isKnown = ({ asymmetricKeyType: type, asymmetricKeyDetails: of }: KeyObject): boolean =>
  type === 'rsa' || (type === 'ec' && of?.namedCurve === 'prime256v1');

const nameIn = (certificate: Node): Buffer => {
  const { issuer, serial } = nameOfCertificate(certificate);
  return Buffer.concat([derOf(issuer), derOf(serial)]);
};

/** SignedData of RFC 5652, section 5.1, with one signer that is named by issuer and number. */
const captured = (content: Node): Captured => {
  const data = within(within(within(content)[1])[0]);
  const [signer, ...others] = within(data.at(-1));
  const [, named, digestAlgorithm, attributes, , signature] = within(signer);
  if (!named || !attributes || !isTagged(0)(attributes) || !signature || others.length > 0)
    throw new Error('this is no signature of one signer');
  return {
    certificates: within(data.find(isTagged(0))).map(derOf),
    named: Buffer.concat(within(named).map(derOf)),
    digestAlgorithm: forge.asn1.derToOid(within(digestAlgorithm)[0]?.value as string),
    attributes: within(attributes),
    signature: Buffer.from(signature.value as string, 'binary'),
  };
};

/** The digest among the signed attributes. */
const digestIn = (attributes: readonly Node[]): Buffer | undefined => {
  for (const attribute of attributes) {
    const [oid, values] = within(attribute);
    if (oid && forge.asn1.derToOid(oid.value as string) === MESSAGE_DIGEST)
      return Buffer.from(within(values)[0]?.value as string, 'binary');
  }
  return undefined;
};
