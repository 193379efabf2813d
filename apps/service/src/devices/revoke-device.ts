import { Injectable } from '@nestjs/common';
import type { RevokeDevice as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { DeviceRevokedEntity } from './device-revoked.entity.js';
import { findDevice } from './find-device.js';

/** Takes its credential from a device and ends the session there. What it still sends is kept for quality. */
@Injectable()
export class RevokeDevice {
  constructor(private readonly record: RecordFact) {}

  /** @throws NotThere */
  run(device: string, request: Request): Promise<Receipt<{ device: string }>> {
    return this.record.run('device revoked', { ...request, revoked: device }, async (fact) => {
      const { id, code } = await findDevice(fact.tx, device);
      await fact.insert(DeviceRevokedEntity, { deviceId: id, reason: request.reason });
      const of = [id];
      await fact.tx.query(
        'update work.device_credential set revoked_at = now() where device_id = $1 and revoked_at is null',
        of,
      );
      await fact.tx.query('delete from work.enrolment_code where device_id = $1', of);
      await fact.tx.query(
        `update work.session s set ended_at = now() where s.device_id = $1 and s.ended_at is null
           and exists (select from work.device_credential c where c.device_id = s.device_id)`,
        of,
      );
      return { device: code };
    });
  }
}
