import { Injectable } from '@nestjs/common';
import type { OneTimeCode, SessionView, UseFirstCode } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { WrongSecret } from '../platform/access/access-refusals.js';
import { callNow } from '../platform/access/call.js';
import { digestOfSecret, newOneTimeCode, typedCode } from '../platform/access/secrets.js';
import { NotThere } from '../platform/refusals.js';
import { findByBadge } from './find-person.js';
import { FindHere } from './here.js';
import { assertStrong } from './secret-rules.js';
import { Sessions } from './sessions.js';
import { setSecret } from './set-secret.js';
import { Throttle } from './throttle.js';
import { ViewSession } from './view-session.query.js';

const LASTS_H = 72;

const GIVE = `
  insert into work.first_code (person_id, digest, until) values ($1, $2, $3)
  on conflict (person_id) do update set digest = excluded.digest, until = excluded.until`;

/** One-time codes: an administrator gives one, and the person chooses a PIN or passphrase with it. */
@Injectable()
export class FirstCodes {
  constructor(
    private readonly db: DataSource,
    private readonly here: FindHere,
    private readonly throttle: Throttle,
    private readonly sessions: Sessions,
    private readonly view: ViewSession,
  ) {}

  /** Gives a code; the one before is void. @throws NotThere */
  async give(badge: string): Promise<OneTimeCode> {
    const person = await findByBadge(this.db.manager, badge);
    if (!person) throw new NotThere('person', badge);
    const code = newOneTimeCode();
    const until = new Date(Date.now() + LASTS_H * 3_600_000);
    await this.db.query(GIVE, [person.personId, digestOfSecret(code), until]);
    return { code, until: until.toISOString() };
  }

  /** @throws TooManyTries, WrongSecret, InvalidRequest when what is chosen is too weak; then the code still serves */
  async use({ badge, code, secret }: UseFirstCode): Promise<SessionView> {
    const call = callNow();
    assertStrong(secret);
    const here = await this.here.of(call);
    await this.throttle.count(badge, here.place);
    const personId = await this.spend(badge, code, secret);
    await this.throttle.forget(badge, here.place);
    await this.sessions.endAllOf(personId);
    const { deviceId, enrolled } = here;
    return this.view.after(await this.sessions.begin(call, { personId, deviceId, enrolled }));
  }

  /** Spends the code and sets the secret together; of two who send the same code one is first. */
  private spend(badge: string, code: string, secret: string): Promise<string> {
    return this.db.transaction(async (tx) => {
      const person = await findByBadge(tx, badge);
      const spent = await tx.query<[unknown[], number]>(
        'delete from work.first_code where person_id = $1 and digest = $2 and until > now()',
        [person?.personId ?? null, digestOfSecret(typedCode(code))],
      );
      if (!person || spent[1] !== 1) throw new WrongSecret();
      await setSecret(tx, person.personId, secret);
      return person.personId;
    });
  }
}
