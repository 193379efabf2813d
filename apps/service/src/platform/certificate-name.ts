import forge from 'node-forge';

const { CONTEXT_SPECIFIC } = forge.asn1.Class;

/** What names an X.509 certificate: who issued it, and its number there. */
export interface CertificateName {
  readonly issuer: forge.asn1.Asn1;
  readonly serial: forge.asn1.Asn1;
}

/**
 * Reads the name of a certificate of any kind of key (RFC 5280, section 4.1).
 *
 * @throws Error when it is no certificate
 */
export const nameOfCertificate = (certificate: forge.asn1.Asn1): CertificateName => {
  const [toBeSigned] = certificate.value as forge.asn1.Asn1[];
  const fields = (toBeSigned?.value ?? []) as forge.asn1.Asn1[];
  const [serial, , issuer] = fields.filter(({ tagClass, type }) => tagClass !== CONTEXT_SPECIFIC || type !== 0);
  if (!serial || !issuer) throw new Error('this is no certificate');
  return { issuer, serial };
};
