import { Injectable } from '@nestjs/common';
import type { BookLoss as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { kilogramsOf } from '../platform/lots/known-amount.js';
import { findLotOrContainer } from '../platform/store/find-lot-or-container.js';
import { LotLossEntity } from './lot-facts.entity.js';

/** Records material that was scrapped, purged, flushed from a line, spilled, kept as a sample, or sent back. */
@Injectable()
export class BookLoss {
  constructor(private readonly record: RecordFact) {}

  run(lot: string, request: Request): Promise<Receipt<{ what: string; kg: number }>> {
    return this.record.run(`lot ${request.what}`, { ...request, lot }, async (fact) => {
      const of = await findLotOrContainer(fact, lot, request.container);
      const amount = kilogramsOf(request.amount, of.lot, '/amount');
      const { what, reason, place = null } = request;
      await fact.insert(LotLossEntity, {
        lotId: of.lot.id,
        containerId: of.containerId,
        what,
        reason,
        place,
        ...amount,
      });
      return { what, kg: amount.kg };
    });
  }
}
