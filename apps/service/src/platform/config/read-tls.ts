import { createPrivateKey, X509Certificate } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { ConfigWrong } from './config-wrong.js';

/** The certificate that the service answers with itself, in PEM form, followed by those it was issued under. */
export interface Tls {
  readonly cert: Buffer;
  readonly key: Buffer;
}

/**
 * Reads certificate and key, and sees that they belong together.
 *
 * @throws ConfigWrong naming the variable; a wrong pair would else be told by whoever connects first
 */
export const readTls = (certFile: string | undefined, keyFile: string | undefined): Tls | null => {
  if (!certFile && !keyFile) return null;
  if (!certFile || !keyFile)
    throw new ConfigWrong(
      `${certFile ? 'TLS_KEY' : 'TLS_CERT'}: is missing. TLS_CERT and TLS_KEY name two files in PEM form.`,
    );
  const cert = readPem('TLS_CERT', certFile);
  const key = readPem('TLS_KEY', keyFile);
  const certificate = parse('TLS_CERT', certFile, 'certificate', () => new X509Certificate(cert));
  const secret = parse('TLS_KEY', keyFile, 'private key without a passphrase', () => createPrivateKey(key));
  if (!certificate.checkPrivateKey(secret))
    throw new ConfigWrong(
      `TLS_KEY: ${keyFile} is not the key of the certificate in TLS_CERT. Name the two of one pair.`,
    );
  return { cert, key };
};

const readPem = (name: string, file: string): Buffer => {
  try {
    return readFileSync(file);
  } catch {
    throw new ConfigWrong(`${name}: ${file} cannot be read. Name a file in PEM form that the service may read.`);
  }
};

const parse = <T>(name: string, file: string, what: string, read: () => T): T => {
  try {
    return read();
  } catch {
    throw new ConfigWrong(`${name}: ${file} holds no ${what}. Name a file in PEM form that does.`);
  }
};
