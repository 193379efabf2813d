import { Injectable } from '@nestjs/common';
import type { RegisterEquipment as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { EquipmentEntity } from './equipment.entity.js';

/** Registers gauges, guns, dispensers, scales and ovens. */
@Injectable()
export class RegisterEquipment {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ code: string }>> {
    return this.record.run('equipment registered', request, async (fact) => {
      const { code, kind, description } = request;
      await fact.insert(EquipmentEntity, { code, kind, description });
      return { code };
    });
  }
}
