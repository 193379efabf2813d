import { Injectable } from '@nestjs/common';
import { buildAuthorizationUrl, calculatePKCECodeChallenge, randomPKCECodeVerifier } from 'openid-client';
import { callNow } from '../../platform/access/call.js';
import { type CookieName, Cookies } from '../../platform/access/cookies.js';
import { digestOfSecret } from '../../platform/access/secrets.js';
import { AccessSettings } from '../../platform/access/settings.js';
import { newSecret } from '../../platform/ids.js';
import { FindHere } from '../here.js';
import { BegunSignIns } from './begun.js';
import { Provider } from './provider.js';
import { returnAddress } from './return-address.js';

/** At a device that many share, the provider asks anew who stands there, and says when it did. */
const ASK_ANEW = { prompt: 'login', max_age: '60' } as const;

/** Begins a sign-in by the office: remembers it, and sends the browser to the provider. */
@Injectable()
export class StartOpenId {
  constructor(
    private readonly provider: Provider,
    private readonly begun: BegunSignIns,
    private readonly here: FindHere,
    private readonly cookies: Cookies,
    private readonly settings: AccessSettings,
  ) {}

  /** @throws OpenIdOff, OpenIdUnavailable, TooManyBegun */
  async run(): Promise<{ readonly url: string }> {
    const call = callNow();
    const { http } = call;
    if (!http) throw new Error('A browser is sent to the provider by a call over HTTP.');
    const provider = await this.provider.find();
    const { enrolled } = await this.here.of(call);
    const digestOf = (name: CookieName): Buffer | null => {
      const secret = this.cookies.read(http.request, name);
      return secret ? digestOfSecret(secret) : null;
    };
    const secrets = { state: newSecret(), nonce: newSecret(), verifier: randomPKCECodeVerifier() };
    const id = await this.begun.keep({
      ...secrets,
      deviceDigest: enrolled ? digestOf('device') : null,
      sessionDigest: digestOf('session'),
    });
    this.cookies.set(http.response, 'open-id', id);
    const url = buildAuthorizationUrl(provider, {
      redirect_uri: returnAddress(http.request, this.settings).href,
      scope: 'openid',
      state: secrets.state,
      nonce: secrets.nonce,
      code_challenge: await calculatePKCECodeChallenge(secrets.verifier),
      code_challenge_method: 'S256',
      ...(enrolled ? ASK_ANEW : {}),
    });
    return { url: url.href };
  }
}
