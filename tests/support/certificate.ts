import 'reflect-metadata';
import * as x509 from '@peculiar/x509';
import { webcrypto } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** A certificate with its key and the authority that issued it, in PEM form, and the files of the first two. */
export interface Certificate {
  readonly certFile: string;
  readonly keyFile: string;
  readonly authority: string;
}

const ALGORITHM = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' } as const;
const DAY_MS = 86_400_000;

const newKeys = (): Promise<webcrypto.CryptoKeyPair> =>
  webcrypto.subtle.generateKey(ALGORITHM, true, ['sign', 'verify']);

const valid = () => ({ notBefore: new Date(Date.now() - DAY_MS), notAfter: new Date(Date.now() + DAY_MS) });

/**
 * Makes an authority of its own, as a plant does, and has it issue a certificate (RFC 5280) for this machine.
 *
 * @param folder where the files are written
 * @param name a name beside 127.0.0.1 and localhost
 */
export const makeCertificate = async (folder: string, name = 'hulls.example'): Promise<Certificate> => {
  const [above, own] = [await newKeys(), await newKeys()];
  const authority = await x509.X509CertificateGenerator.createSelfSigned({
    ...{
      serialNumber: '01',
      name: 'CN=Invented plant authority',
      keys: above,
      signingAlgorithm: ALGORITHM,
      ...valid(),
    },
    extensions: [
      new x509.BasicConstraintsExtension(true, 0, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.keyCertSign, true),
    ],
  });
  const certificate = await x509.X509CertificateGenerator.create({
    ...{ serialNumber: '02', subject: `CN=${name}`, issuer: authority.subject, ...valid() },
    ...{ publicKey: own.publicKey, signingKey: above.privateKey, signingAlgorithm: ALGORITHM },
    extensions: [
      new x509.SubjectAlternativeNameExtension([
        { type: 'ip', value: '127.0.0.1' },
        { type: 'dns', value: 'localhost' },
        { type: 'dns', value: name },
      ]),
    ],
  });
  const [certFile, keyFile] = [join(folder, 'cert.pem'), join(folder, 'key.pem')];
  writeFileSync(certFile, certificate.toString('pem'));
  writeFileSync(
    keyFile,
    x509.PemConverter.encode(await webcrypto.subtle.exportKey('pkcs8', own.privateKey), 'PRIVATE KEY'),
  );
  return { certFile, keyFile, authority: authority.toString('pem') };
};
