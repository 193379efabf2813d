import { Injectable } from '@nestjs/common';
import type { ChangeSecret as Request } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { WrongSecret } from '../platform/access/access-refusals.js';
import { callNow, personNow } from '../platform/access/call.js';
import { AccessSettings } from '../platform/access/settings.js';
import { verifierFor } from './find-person.js';
import { FindHere } from './here.js';
import { assertStrong, kindOf } from './secret-rules.js';
import { Sessions } from './sessions.js';
import { setSecret } from './set-secret.js';
import { Throttle } from './throttle.js';
import { isSecret } from './verifier.js';

/** Changes the own PIN or passphrase, by either of the present ones; every other session of the person ends. */
@Injectable()
export class ChangeSecret {
  constructor(
    private readonly db: DataSource,
    private readonly here: FindHere,
    private readonly throttle: Throttle,
    private readonly sessions: Sessions,
    private readonly settings: AccessSettings,
  ) {}

  /** @throws TooManyTries, WrongSecret, InvalidRequest */
  async run({ present, secret }: Request): Promise<{ done: true }> {
    const call = callNow();
    const { badge, personId } = personNow();
    assertStrong(secret);
    const { place } = await this.here.of(call);
    await this.throttle.count(badge, place);
    const known = await verifierFor(this.db.manager, badge, kindOf(present), this.settings.demo);
    if (!(await isSecret(known?.verifier, present))) throw new WrongSecret();
    await this.throttle.forget(badge, place);
    await this.db.transaction((tx) => setSecret(tx, personId, secret));
    await this.sessions.endAllOf(personId, call);
    return { done: true };
  }
}
