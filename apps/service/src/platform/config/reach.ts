import type { OpenIdSettings } from '../access/settings.js';
import { ConfigWrong } from './config-wrong.js';
import { isLoopbackName } from './loopback.js';
import type { ReachSet } from './reach-environment.js';
import { readOpenId } from './read-open-id.js';
import { readTls, type Tls } from './read-tls.js';
import { readTrustedProxy } from './read-trusted-proxy.js';

/** How the service is reached: on which address, with which certificate, behind which proxy, under which name. */
export interface Reach {
  readonly host: string;
  readonly tls: Tls | null;
  /** Addresses of proxies whose word about the caller's address and protocol is taken. */
  readonly trustedProxy: readonly string[];
  /** Where browsers reach it, when not at its own address: an origin, such as https://hulls.example.org. */
  readonly publicUrl: string | null;
  readonly openId: OpenIdSettings | null;
}

/**
 * Reads how the service is reached.
 *
 * @throws ConfigWrong when it would listen beyond this machine without TLS, or with the demo's PINs
 */
export const readReach = (set: ReachSet, demo: boolean): Reach => {
  const tls = readTls(set.TLS_CERT, set.TLS_KEY);
  const trustedProxy = readTrustedProxy(set.TRUSTED_PROXY);
  const publicUrl = set.PUBLIC_URL === undefined ? null : readPublicUrl(set.PUBLIC_URL);
  const beyond = !isLoopbackName(set.HOST);
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

const readPublicUrl = (given: string): string => {
  const { origin, pathname } = new URL(given);
  if (pathname !== '/')
    throw new ConfigWrong(
      `PUBLIC_URL: ${given} names a folder. The service has a host of its own: set ${origin}, or another name.`,
    );
  return origin;
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
