import { Injectable, Logger } from '@nestjs/common';
import type { Request } from 'express';
import { authorizationCodeGrant, type IDToken } from 'openid-client';
import { type Call, callNow } from '../../platform/access/call.js';
import { Cookies } from '../../platform/access/cookies.js';
import { AccessSettings } from '../../platform/access/settings.js';
import { plainPage } from '../../platform/http/plain-page.js';
import { FindHere } from '../here.js';
import { Sessions } from '../sessions.js';
import { type Begun, BegunSignIns, type SpentSignIn } from './begun.js';
import { NoRole, OpenIdNotBegun, OpenIdNotFresh, OpenIdNotLinked, OpenIdNotProved } from './open-id-refusals.js';
import { type LinkedPerson, OpenIdLinks } from './open-id-links.js';
import { Provider } from './provider.js';
import { returnedAddress } from './return-address.js';
import { whyNotProved, wordForLog } from './why-not-proved.js';

/** Both times of a token are whole seconds. */
const ROUNDING_S = 2;

/**
 * Whether the provider asked who it is after the sign-in was begun here: how long ago it asked, by its own clock, against
 * how long ago that was by ours. So it matters not how far the two clocks are apart.
 */
const isFresh = ({ iat, auth_time: asked }: IDToken, begunAt: Date): boolean =>
  asked !== undefined && iat - asked <= (Date.now() - begunAt.getTime()) / 1_000 + ROUNDING_S;

/** Finishes a sign-in by the office, when the browser comes back from the provider. */
@Injectable()
export class FinishOpenId {
  private readonly log = new Logger('open-id');

  constructor(
    private readonly provider: Provider,
    private readonly begun: BegunSignIns,
    private readonly links: OpenIdLinks,
    private readonly here: FindHere,
    private readonly sessions: Sessions,
    private readonly cookies: Cookies,
    private readonly settings: AccessSettings,
  ) {}

  /**
   * @returns a page of this site that goes on to the first one: a browser that was sent here by another site would not
   * send a strict cookie on a redirect
   * @throws OpenIdOff, OpenIdNotBegun, OpenIdNotProved, OpenIdNotLinked, NoRole, OpenIdUnavailable and more
   */
  async run(): Promise<string> {
    const call = callNow();
    const { http } = call;
    if (!http) throw new Error('A browser comes back by a call over HTTP.');
    const { name } = this.provider.set;
    const id = this.cookies.read(http.request, 'open-id');
    this.cookies.clear(http.response, 'open-id');
    const begun = id ? await this.begun.spend(id) : null;
    if (!begun) throw new OpenIdNotBegun();
    const claims = await this.prove(begun, http.request);
    const person = await this.links.personOf(claims.iss, claims.sub);
    if (!person) throw new OpenIdNotLinked(name, claims.iss, claims.sub);
    if (person.roles.length === 0) throw new NoRole(person.badge);
    await this.begin(call, { begun, claims, person });
    return plainPage({
      title: 'Signed in',
      lines: [`Badge ${person.badge} is signed in.`],
      links: [{ to: '/', text: 'Go on to Hull Record' }],
      goOnTo: '/',
    });
  }

  private async prove({ state, nonce, verifier }: Begun, request: Request): Promise<IDToken> {
    const provider = await this.provider.find();
    const checks = { expectedState: state, expectedNonce: nonce, pkceCodeVerifier: verifier, idTokenExpected: true };
    try {
      const tokens = await authorizationCodeGrant(provider, returnedAddress(request, this.settings), checks);
      const claims = tokens.claims();
      if (!claims) throw new OpenIdNotProved();
      return claims;
    } catch (error) {
      this.log.warn(`A sign-in was not proved: ${wordForLog(error)}`);
      throw whyNotProved(error, this.provider.set.name);
    }
  }

  private async begin(call: Call, { begun, claims, person }: Proved): Promise<void> {
    const { deviceId, enrolled } = await this.here.of(call, begun.deviceDigest);
    if (enrolled && !isFresh(claims, begun.begunAt)) throw new OpenIdNotFresh(this.provider.set.name);
    const { personId } = person;
    await this.sessions.begin(call, { personId, deviceId, enrolled, sessionBefore: begun.sessionDigest });
  }
}

interface Proved {
  readonly begun: SpentSignIn;
  readonly claims: IDToken;
  readonly person: LinkedPerson;
}
