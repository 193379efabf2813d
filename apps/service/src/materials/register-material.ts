import { Injectable } from '@nestjs/common';
import type { RegisterMaterial as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { MaterialEntity } from './material.entity.js';

/** Registers a material. Its limits belong to it, not to the code: a data sheet is the maker's word. */
@Injectable()
export class RegisterMaterial {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ code: string }>> {
    return this.record.run('material registered', request, async (fact) => {
      await fact.insert(MaterialEntity, {
        code: request.code,
        name: request.name,
        role: request.role,
        maker: request.maker ?? null,
        shelfLifeDays: request.shelfLifeDays ?? null,
        densityKgPerL: request.densityKgPerL ?? null,
        arealMassKgPerM2: request.arealMassKgPerM2 ?? null,
        pieceMassKg: request.pieceMassKg ?? null,
        lossAllowance: request.lossAllowance ?? null,
        makerData: request.makerData,
      });
      return { code: request.code };
    });
  }
}
