import { Injectable } from '@nestjs/common';
import type { ChangeLotState as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findLots } from '../platform/lots/find-lots.js';
import { NotThere } from '../platform/refusals.js';
import { LotStateEntity } from './lot-state.entity.js';

/** Says that a lot is quarantined, released, held or rejected from a time on. State is read from these facts. */
@Injectable()
export class ChangeLotState {
  constructor(private readonly record: RecordFact) {}

  run(lot: string, request: Request): Promise<Receipt<{ state: string }>> {
    return this.record.run('lot state changed', { ...request, lot }, async (fact) => {
      const found = (await findLots(fact.tx, fact.author.plantId, [lot], fact.happenedAt)).get(lot);
      if (!found) throw new NotThere('lot', lot);
      await fact.insert(LotStateEntity, { lotId: found.id, state: request.state, reason: request.reason });
      return { state: request.state };
    });
  }
}
