import { Injectable } from '@nestjs/common';
import type { SetTouchUpLimit as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { TouchUpLimitEntity } from './touch-up-limit.entity.js';

/** Sets what may be touched up in this plant, from then on. */
@Injectable()
export class SetTouchUpLimit {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ spotsInAZone: number }>> {
    return this.record.run('touch-up limit set', request, async (fact) => {
      const { spotsInAZone, spotsOnAPart, largestMm, source } = request;
      await fact.insert(TouchUpLimitEntity, { spotsInAZone, spotsOnAPart, largestMm, source });
      return { spotsInAZone };
    });
  }
}
