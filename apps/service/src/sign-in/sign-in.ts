import { Injectable } from '@nestjs/common';
import type { SessionView, SignIn as Request } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { WrongSecret } from '../platform/access/access-refusals.js';
import { callNow } from '../platform/access/call.js';
import { AccessSettings } from '../platform/access/settings.js';
import { verifierFor } from './find-person.js';
import { FindHere } from './here.js';
import { kindOf } from './secret-rules.js';
import { Sessions } from './sessions.js';
import { Throttle } from './throttle.js';
import { isSecret } from './verifier.js';
import { ViewSession } from './view-session.query.js';

/** Signs a person in by badge and PIN or passphrase; at an enrolled device, that person has it from then on. */
@Injectable()
export class SignIn {
  constructor(
    private readonly db: DataSource,
    private readonly here: FindHere,
    private readonly throttle: Throttle,
    private readonly sessions: Sessions,
    private readonly view: ViewSession,
    private readonly settings: AccessSettings,
  ) {}

  /** @throws TooManyTries, WrongSecret; which of badge and secret is wrong is not said, nor shown by the time it takes */
  async run({ badge, secret }: Request): Promise<SessionView> {
    const call = callNow();
    const here = await this.here.of(call);
    await this.throttle.count(badge, here.place);
    const kind = kindOf(secret);
    const known = await verifierFor(this.db.manager, badge, kind, this.settings.demo);
    const right = await isSecret(known?.verifier, secret);
    if (!known || !right || (kind === 'pin' && !here.pinServes)) throw new WrongSecret();
    await this.throttle.forget(badge, here.place);
    const { deviceId, enrolled } = here;
    return this.view.after(await this.sessions.begin(call, { personId: known.personId, deviceId, enrolled }));
  }

  async out(): Promise<SessionView> {
    await this.sessions.end(callNow());
    return this.view.after(null);
  }
}
