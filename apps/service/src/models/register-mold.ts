import { Injectable } from '@nestjs/common';
import type { RegisterMold as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { MoldEntity } from './mold.entity.js';

/** Registers a mold for one kind of part of a model. */
@Injectable()
export class RegisterMold {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ code: string }>> {
    return this.record.run('mold registered', request, async (fact) => {
      const modelId = await findByCode(fact.tx, 'model', fact.author.plantId, request.model, '/model');
      await fact.insert(MoldEntity, { code: request.code, modelId, partKind: request.partKind });
      return { code: request.code };
    });
  }
}
