import { readFileSync } from 'node:fs';
import { z } from 'zod';
import type { OpenIdSettings } from '../access/settings.js';
import { ConfigWrong } from './config-wrong.js';

/** Names under which this machine alone is reached. */
export const LOOPBACK = ['127.0.0.1', '::1', 'localhost'] as const;

/** How the service is reached: on which address, with which certificate, behind which proxy, under which name. */
export interface Reach {
  readonly host: string;
  readonly tls: { readonly cert: Buffer; readonly key: Buffer } | null;
  /** Addresses of proxies whose word about the caller's address and protocol is taken. */
  readonly trustedProxy: readonly string[];
  /** Where browsers reach it, when not at its own address. */
  readonly publicUrl: string | null;
  readonly openId: OpenIdSettings | null;
}

export const ReachEnvironment = z.object({
  HOST: z.string().default('127.0.0.1'),
  TLS_CERT: z.string().optional(),
  TLS_KEY: z.string().optional(),
  TRUSTED_PROXY: z.string().optional(),
  PUBLIC_URL: z.url({ protocol: /^https$/ }).optional(),
  OPENID_ISSUER: z.url({ protocol: /^https?$/ }).optional(),
  OPENID_CLIENT_ID: z.string().optional(),
  OPENID_CLIENT_SECRET: z.string().optional(),
  OPENID_NAME: z.string().trim().min(1).max(40).default('the office'),
});
type Set = z.output<typeof ReachEnvironment>;

/**
 * Reads how the service is reached.
 *
 * @throws ConfigWrong when it would listen beyond this machine without TLS, or with the demo's PINs
 */
export const readReach = (set: Set, demo: boolean): Reach => {
  const tls = readTls(set.TLS_CERT, set.TLS_KEY);
  const trustedProxy = (set.TRUSTED_PROXY ?? '')
    .split(',')
    .map((each) => each.trim())
    .filter(Boolean);
  const publicUrl = set.PUBLIC_URL === undefined ? null : new URL(set.PUBLIC_URL).origin;
  const beyond = !(LOOPBACK as readonly string[]).includes(set.HOST);
  if (beyond) assertSafe({ host: set.HOST, encrypted: tls !== null || trustedProxy.length > 0, publicUrl, demo });
  if (trustedProxy.length > 0 && publicUrl === null)
    throw new ConfigWrong(
      'PUBLIC_URL: is missing. Behind a proxy, set the https address under which browsers reach the service.',
    );
  if (publicUrl !== null && tls === null && trustedProxy.length === 0)
    throw new ConfigWrong(
      'TLS_CERT or TRUSTED_PROXY: is missing. PUBLIC_URL is for a service with a certificate, or behind a proxy that has one.',
    );
  return { host: set.HOST, tls, trustedProxy, publicUrl, openId: readOpenId(set, publicUrl) };
};

interface Beyond {
  readonly host: string;
  readonly encrypted: boolean;
  readonly publicUrl: string | null;
  readonly demo: boolean;
}

const assertSafe = ({ host, encrypted, publicUrl, demo }: Beyond): void => {
  const beyond = `HOST: ${host} is not a loopback address.`;
  if (!encrypted)
    throw new ConfigWrong(
      `${beyond} Badges and PINs must not travel in clear: set TLS_CERT and TLS_KEY, or TRUSTED_PROXY for a proxy with a certificate; or set HOST to 127.0.0.1, ::1 or localhost.`,
    );
  if (publicUrl === null)
    throw new ConfigWrong(
      `${beyond} Set PUBLIC_URL to the https address under which browsers reach it; other names are refused.`,
    );
  if (demo) throw new ConfigWrong(`${beyond} Set DEMO to off: everybody knows the PINs of the demo.`);
};

const readTls = (cert: string | undefined, key: string | undefined): Reach['tls'] => {
  if (!cert && !key) return null;
  if (!cert || !key)
    throw new ConfigWrong(
      `${cert ? 'TLS_KEY' : 'TLS_CERT'}: is missing. TLS_CERT and TLS_KEY name two files in PEM form.`,
    );
  return { cert: readPem('TLS_CERT', cert), key: readPem('TLS_KEY', key) };
};

const readPem = (name: string, file: string): Buffer => {
  try {
    return readFileSync(file);
  } catch {
    throw new ConfigWrong(`${name}: ${file} cannot be read. Name a file in PEM form that the service may read.`);
  }
};

const readOpenId = (set: Set, publicUrl: string | null): OpenIdSettings | null => {
  const { OPENID_ISSUER: issuer, OPENID_CLIENT_ID: clientId, OPENID_CLIENT_SECRET: clientSecret } = set;
  if (!issuer && !clientId && !clientSecret) return null;
  if (!issuer || !clientId || !clientSecret) {
    const missing = !issuer ? 'OPENID_ISSUER' : !clientId ? 'OPENID_CLIENT_ID' : 'OPENID_CLIENT_SECRET';
    throw new ConfigWrong(
      `${missing}: is missing. The sign-in of the office needs OPENID_ISSUER, OPENID_CLIENT_ID and OPENID_CLIENT_SECRET.`,
    );
  }
  return { name: set.OPENID_NAME, issuer, clientId, clientSecret, publicUrl };
};
