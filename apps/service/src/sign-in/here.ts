import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Call } from '../platform/access/call.js';
import { ReadCaller } from '../platform/access/read-caller.js';
import { AccessSettings } from '../platform/access/settings.js';
import { isLoopbackAddress } from '../platform/config/loopback.js';
import { standing } from '../platform/facts/standing.js';
import { FIRST_DEVICE } from '../platform/people/first.js';

/** The browser that signs in. */
export interface Here {
  readonly deviceId: string;
  readonly device: string;
  readonly enrolled: boolean;
  /** By what tries are counted: the device, or the address. */
  readonly place: string;
  /** Whether a PIN serves: at an enrolled device, and at the machine itself. */
  readonly pinServes: boolean;
}

/** Finds out at which device a browser is. One that is not enrolled counts as the first desk. */
@Injectable()
export class FindHere {
  constructor(
    private readonly db: DataSource,
    private readonly callers: ReadCaller,
    private readonly settings: AccessSettings,
  ) {}

  /** @param known digest of the credential of its device, when the browser did not send that along; null of none */
  async of({ http }: Call, known?: Buffer | null): Promise<Here> {
    if (!http) throw new Error('Somebody signs in by a call over HTTP.');
    const enrolled = await (known ? this.callers.deviceBy(known) : this.callers.device(http.request));
    if (enrolled && !enrolled.revoked) {
      const { deviceId, device } = enrolled;
      return { deviceId, device, enrolled: true, place: `device ${deviceId}`, pinServes: true };
    }
    const address = http.request.ip ?? 'unknown';
    const desk = await this.desk();
    const local = this.settings.localIsHere && isLoopbackAddress(address);
    return { ...desk, enrolled: false, place: `address ${address}`, pinServes: local };
  }

  private async desk(): Promise<{ deviceId: string; device: string }> {
    const [desk] = await this.db.query<{ deviceId: string; device: string }[]>(
      `select d.root as "deviceId", d.code as device from fact.device d join fact.plant p on p.id = d.plant_id
       where d.code = $1 and p.code = $2 and ${standing('d')}`,
      [FIRST_DEVICE, this.settings.plant.code],
    );
    if (!desk) throw new Error('The plant has no first device.');
    return desk;
  }
}
