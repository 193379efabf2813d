import { Injectable } from '@nestjs/common';
import type { RegisterDevice as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { DeviceEntity } from './device.entity.js';

/** Registers a device. One that is not rated for it stays outside areas classified for electrical equipment. */
@Injectable()
export class RegisterDevice {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ code: string }>> {
    return this.record.run('device registered', request, async (fact) => {
      const { code, description, ratedForClassifiedArea } = request;
      await fact.insert(DeviceEntity, { code, description, ratedForClassifiedArea });
      return { code };
    });
  }
}
