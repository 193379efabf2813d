import { Injectable } from '@nestjs/common';
import type { RegisterTank as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { TankEntity } from './tank.entity.js';

/** Registers a bulk tank for one material. */
@Injectable()
export class RegisterTank {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ code: string }>> {
    return this.record.run('tank registered', request, async (fact) => {
      const materialId = await findByCode(fact.tx, 'material', fact.author.plantId, request.material, '/material');
      await fact.insert(TankEntity, { code: request.code, materialId, capacityKg: request.capacityKg });
      return { code: request.code };
    });
  }
}
