import { Injectable } from '@nestjs/common';
import type { EnrolDevice as Request, OneTimeCode } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { callNow } from '../platform/access/call.js';
import { Cookies } from '../platform/access/cookies.js';
import { DeviceCredentialEntity, EnrolmentCodeEntity } from '../platform/access/device.entities.js';
import { digestOfSecret, newOneTimeCode, typedCode } from '../platform/access/secrets.js';
import { standing } from '../platform/facts/standing.js';
import { newSecret } from '../platform/ids.js';
import { FIRST_DEVICE } from '../platform/people/first.js';
import { Conflict, Refusal } from '../platform/refusals.js';
import { cautionOf, findDevice, type FoundDevice } from './find-device.js';

const LASTS_MIN = 30;
const STANDS_FOR_ALL = `${FIRST_DEVICE} stands for every browser that is not enrolled: register a device of its own for this one.`;

/** The code is not one that was given, or it was used or is too old. */
class WrongCode extends Refusal {
  readonly code = 'wrong-enrolment-code';
  readonly reason = 'forbidden';
  override readonly errors = [
    {
      pointer: '/code',
      detail: 'Check it, or have an administrator give a new one: it serves once, for half an hour.',
    },
  ];
  constructor() {
    super('This is no code that serves.');
  }
}

/** What an enrolled browser is told. */
export interface Enrolled {
  readonly device: string;
  readonly ratedForClassifiedArea: boolean;
  readonly caution: string;
}

/** Makes a browser a device of the shop: the desk gives a one-time code, and the browser that sends it gets a credential. */
@Injectable()
export class EnrolDevice {
  constructor(
    private readonly db: DataSource,
    private readonly cookies: Cookies,
  ) {}

  /** @throws NotThere, Conflict for the one that stands for all browsers which are not enrolled */
  async giveCode(device: string): Promise<OneTimeCode> {
    const found = await findDevice(this.db.manager, device);
    if (found.code === FIRST_DEVICE) throw new Conflict('stands-for-all', STANDS_FOR_ALL);
    const code = newOneTimeCode();
    const until = new Date(Date.now() + LASTS_MIN * 60_000);
    await this.db.transaction(async (tx) => {
      await tx.query('delete from work.enrolment_code where device_id = $1 or until < now()', [found.id]);
      await tx.insert(EnrolmentCodeEntity, { digest: digestOfSecret(code), deviceId: found.id, until });
    });
    return { code, until: until.toISOString(), caution: cautionOf(found) };
  }

  /**
   * Enrols this browser. Whatever was enrolled as the same device before is not any more, and who is signed in there is
   * signed out.
   *
   * @throws WrongCode
   */
  async run({ code }: Request): Promise<Enrolled> {
    const { http } = callNow();
    if (!http) throw new Error('A browser is enrolled by a call over HTTP.');
    const secret = newSecret();
    const device = await this.db.transaction(async (tx) => {
      const [spent] = await tx.query<[FoundDevice[], number]>(
        `delete from work.enrolment_code e using fact.device d
         where e.digest = $1 and e.until > now() and d.root = e.device_id and ${standing('d')}
         returning d.root as id, d.code, d.rated_for_classified_area as rated`,
        [digestOfSecret(typedCode(code))],
      );
      const [found] = spent;
      if (!found) throw new WrongCode();
      await tx.query(
        'update work.device_credential set revoked_at = now() where device_id = $1 and revoked_at is null',
        [found.id],
      );
      await tx.query('update work.session set ended_at = now() where device_id = $1 and ended_at is null', [found.id]);
      await tx.insert(DeviceCredentialEntity, {
        ...{ digest: digestOfSecret(secret), deviceId: found.id, enrolledAt: new Date(), revokedAt: null },
      });
      return found;
    });
    this.cookies.set(http.response, 'device', secret);
    return { device: device.code, ratedForClassifiedArea: device.rated, caution: cautionOf(device) };
  }
}
