import { Injectable, Logger } from '@nestjs/common';
import * as client from 'openid-client';
import { AccessSettings, type OpenIdSettings } from '../../platform/access/settings.js';
import { isLoopbackHost } from '../../platform/config/loopback.js';
import { OpenIdOff, OpenIdUnavailable } from './open-id-refusals.js';
import { wordForLog } from './why-not-proved.js';

/** The provider gets this long for each answer, s. */
const PATIENCE_S = 5;
/** What it says of itself is asked anew after this, ms. */
const KEPT_MS = 3_600_000;

/** By the method that the provider takes; basic, when it names none (OpenID Connect Discovery 1.0, section 3). */
const authenticate =
  (secret: string): client.ClientAuth =>
  (server, metadata, body, headers) => {
    const taken = server.token_endpoint_auth_methods_supported ?? ['client_secret_basic'];
    const how = taken.includes('client_secret_basic') ? client.ClientSecretBasic : client.ClientSecretPost;
    return how(secret)(server, metadata, body, headers);
  };

/** The provider of the office's sign-in. It is first asked when somebody signs in by it, and again after it did not answer. */
@Injectable()
export class Provider {
  private readonly log = new Logger('open-id');
  private found: { readonly at: number; readonly client: Promise<client.Configuration> } | undefined;

  constructor(private readonly settings: AccessSettings) {}

  /** @throws OpenIdOff when the plant has none */
  get set(): OpenIdSettings {
    if (!this.settings.openId) throw new OpenIdOff();
    return this.settings.openId;
  }

  /** What is needed to speak with it; those who ask at the same time wait for one answer. @throws OpenIdUnavailable */
  async find(): Promise<client.Configuration> {
    if (!this.found || this.found.at < Date.now() - KEPT_MS)
      this.found = { at: Date.now(), client: discover(this.set) };
    const asked = this.found;
    try {
      return await asked.client;
    } catch (error) {
      if (this.found === asked) this.found = undefined;
      this.log.warn(`The provider could not be asked: ${wordForLog(error)}`);
      throw new OpenIdUnavailable(this.set.name);
    }
  }
}

/** Signatures are checked though TLS brought the token: one more key, of another hand, has to fit. */
const discover = (set: OpenIdSettings): Promise<client.Configuration> => {
  const issuer = new URL(set.issuer);
  const inClear = issuer.protocol === 'http:' && isLoopbackHost(issuer.hostname);
  return client.discovery(issuer, set.clientId, {}, authenticate(set.clientSecret), {
    timeout: PATIENCE_S,
    execute: [client.enableNonRepudiationChecks, ...(inClear ? [client.allowInsecureRequests] : [])],
  });
};
