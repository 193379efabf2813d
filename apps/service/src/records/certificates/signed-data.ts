import forge from 'node-forge';
import { createHash, type KeyObject, sign } from 'node:crypto';
import { nameOfCertificate } from '../../platform/certificate-name.js';

const { asn1 } = forge;
const { UNIVERSAL, CONTEXT_SPECIFIC } = asn1.Class;
const { SEQUENCE, SET, OID, OCTETSTRING, INTEGER, UTCTIME } = asn1.Type;

/** Names of RFC 5652 and RFC 5758. */
const DATA = '1.2.840.113549.1.7.1';
const SIGNED_DATA = '1.2.840.113549.1.7.2';
const CONTENT_TYPE = '1.2.840.113549.1.9.3';
const MESSAGE_DIGEST = '1.2.840.113549.1.9.4';
const SIGNING_TIME = '1.2.840.113549.1.9.5';
const SHA_256 = '2.16.840.1.101.3.4.2.1';
const ECDSA_WITH_SHA_256 = '1.2.840.10045.4.3.2';

type Node = forge.asn1.Asn1;

const sequence = (...values: Node[]): Node => asn1.create(UNIVERSAL, SEQUENCE, true, values);
const setOf = (...values: Node[]): Node => asn1.create(UNIVERSAL, SET, true, values);
const tagged = (tag: number, values: Node[]): Node => asn1.create(CONTEXT_SPECIFIC, tag, true, values);
const oid = (name: string): Node => asn1.create(UNIVERSAL, OID, false, asn1.oidToDer(name).getBytes());
const octets = (bytes: Buffer): Node => asn1.create(UNIVERSAL, OCTETSTRING, false, bytes.toString('binary'));
const one = (): Node => asn1.create(UNIVERSAL, INTEGER, false, asn1.integerToDer(1).getBytes());
const attribute = (name: string, value: Node): Node => sequence(oid(name), setOf(value));
const derOf = (node: Node): Buffer => Buffer.from(asn1.toDer(node).getBytes(), 'binary');

/**
 * A detached signature of content (SignedData of RFC 5652) by ECDSA with SHA-256 (RFC 5753), with the certificate of
 * the key in it.
 *
 * @param certificate in DER
 */
export const signedData = (content: Buffer, key: KeyObject, certificate: Buffer, at: Date): Buffer => {
  const read = asn1.fromDer(certificate.toString('binary'));
  // Signed as a SET OF in DER, whose values stand in the order of their bytes (X.690, section 11.6).
  const attributes = [
    attribute(CONTENT_TYPE, oid(DATA)),
    attribute(SIGNING_TIME, asn1.create(UNIVERSAL, UTCTIME, false, asn1.dateToUtcTime(at))),
    attribute(MESSAGE_DIGEST, octets(createHash('sha256').update(content).digest())),
  ].sort((a, b) => Buffer.compare(derOf(a), derOf(b)));
  const signature = sign('sha256', derOf(setOf(...attributes)), key);
  const { issuer, serial } = nameOfCertificate(read);
  const signer = sequence(
    ...[one(), sequence(issuer, serial), sequence(oid(SHA_256)), tagged(0, attributes)],
    ...[sequence(oid(ECDSA_WITH_SHA_256)), octets(signature)],
  );
  const data = sequence(one(), setOf(sequence(oid(SHA_256))), sequence(oid(DATA)), tagged(0, [read]), setOf(signer));
  return derOf(sequence(oid(SIGNED_DATA), tagged(0, [data])));
};
