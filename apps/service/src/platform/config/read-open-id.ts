import type { OpenIdSettings } from '../access/settings.js';
import { ConfigWrong } from './config-wrong.js';
import { isLoopbackHost } from './loopback.js';
import type { ReachSet } from './reach-environment.js';

/**
 * Reads the sign-in of the office; null when there is none. The provider is not asked: the service starts without it.
 *
 * @throws ConfigWrong when something is missing, or the provider would be asked in clear
 */
export const readOpenId = (set: ReachSet, publicUrl: string | null): OpenIdSettings | null => {
  const { OPENID_ISSUER: issuer, OPENID_CLIENT_ID: clientId, OPENID_CLIENT_SECRET: clientSecret } = set;
  if (!issuer && !clientId && !clientSecret) return null;
  if (!issuer || !clientId || !clientSecret) {
    const missing = !issuer ? 'OPENID_ISSUER' : !clientId ? 'OPENID_CLIENT_ID' : 'OPENID_CLIENT_SECRET';
    throw new ConfigWrong(
      `${missing}: is missing. The sign-in of the office needs OPENID_ISSUER, OPENID_CLIENT_ID and OPENID_CLIENT_SECRET.`,
    );
  }
  return { name: set.OPENID_NAME, issuer: assertIssuer(issuer), clientId, clientSecret, publicUrl };
};

/** An issuer is a URL with https and without query or fragment (OpenID Connect Discovery 1.0, section 3). */
const assertIssuer = (issuer: string): string => {
  const { protocol, hostname, pathname, search, hash } = new URL(issuer);
  if (protocol !== 'https:' && !isLoopbackHost(hostname))
    throw new ConfigWrong(
      `OPENID_ISSUER: ${issuer} is not https. Secrets must not travel in clear: use its https address.`,
    );
  if (pathname.includes('/.well-known/') || search !== '' || hash !== '')
    throw new ConfigWrong(
      `OPENID_ISSUER: ${issuer} is not an issuer. Set what its configuration calls issuer, without /.well-known/ and what follows.`,
    );
  return issuer;
};
