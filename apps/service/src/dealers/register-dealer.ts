import { Injectable } from '@nestjs/common';
import type { RegisterDealer as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { DealerEntity } from './dealer.entity.js';

/** Registers dealers. */
@Injectable()
export class RegisterDealer {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ code: string }>> {
    return this.record.run('dealer registered', request, async (fact) => {
      const { code, name, place } = request;
      await fact.insert(DealerEntity, { code, name, place });
      return { code };
    });
  }
}
