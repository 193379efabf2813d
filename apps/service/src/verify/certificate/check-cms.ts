import forge from 'node-forge';
import { createHash, createPublicKey, verify } from 'node:crypto';

const MESSAGE_DIGEST = '1.2.840.113549.1.9.4';
const SET_OF = 0x31;

/** What node-forge keeps of a PKCS #7 that it has read. */
interface Captured {
  readonly certificates: readonly forge.pki.Certificate[];
  readonly rawCapture: {
    readonly authenticatedAttributes: readonly forge.asn1.Asn1[];
    readonly signature: string;
    readonly digestAlgorithm: string;
  };
}

/**
 * Checks a detached signature (RFC 5652, section 5.4; SHA-256 with RSA) by the certificate in it.
 *
 * @returns SHA-256 of that certificate in DER, in hexadecimal; or a sentence that says what does not fit
 */
export const checkCms = (cms: Buffer, signed: Buffer): { readonly fingerprint: string } | string => {
  let read: Captured;
  try {
    read = forge.pkcs7.messageFromAsn1(forge.asn1.fromDer(cms.toString('binary'))) as unknown as Captured;
  } catch {
    return 'The signature cannot be read.';
  }
  const { authenticatedAttributes: attributes, signature, digestAlgorithm } = read.rawCapture;
  const [certificate] = read.certificates;
  if (!certificate || read.certificates.length !== 1) return 'The signature has not one certificate.';
  if (forge.asn1.derToOid(digestAlgorithm) !== forge.pki.oids['sha256']) return 'The signature is not by SHA-256.';
  const digest = createHash('sha256').update(signed).digest();
  if (!digestIn(attributes)?.equals(digest)) return 'The file is not what was signed: a byte was changed.';
  const set = forge.asn1.toDer(forge.asn1.create(forge.asn1.Class.UNIVERSAL, SET_OF & 0x1f, true, [...attributes]));
  const key = createPublicKey(forge.pki.publicKeyToPem(certificate.publicKey));
  const fits = verify('sha256', Buffer.from(set.getBytes(), 'binary'), key, Buffer.from(signature, 'binary'));
  if (!fits) return 'The signature is not one of the key of its certificate.';
  const der = forge.asn1.toDer(forge.pki.certificateToAsn1(certificate)).getBytes();
  return { fingerprint: createHash('sha256').update(der, 'binary').digest('hex') };
};

/** The digest among the signed attributes. */
const digestIn = (attributes: readonly forge.asn1.Asn1[]): Buffer | undefined => {
  for (const attribute of attributes) {
    const [oid, values] = attribute.value as forge.asn1.Asn1[];
    if (oid && values && forge.asn1.derToOid(oid.value as string) === MESSAGE_DIGEST)
      return Buffer.from((values.value as forge.asn1.Asn1[])[0]?.value as string, 'binary');
  }
  return undefined;
};
