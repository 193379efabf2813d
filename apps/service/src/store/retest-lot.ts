import { Injectable } from '@nestjs/common';
import type { RetestLot as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { assertRole } from '../platform/people/assert-role.js';
import { findLotOrContainer } from './find-lot-or-container.js';
import { LotRetestEntity } from './lot-facts.entity.js';

/** Records a retest by quality that gives a lot another last day of use, from then on. */
@Injectable()
export class RetestLot {
  constructor(private readonly record: RecordFact) {}

  run(lot: string, request: Request): Promise<Receipt<{ expiresOn: string }>> {
    return this.record.run('lot retested', { ...request, lot }, async (fact) => {
      await assertRole(fact, ['quality'], 'give a lot another last day of use');
      const { expiresOn, certificate, result } = request;
      const of = await findLotOrContainer(fact, lot, undefined);
      await fact.insert(LotRetestEntity, { lotId: of.lot.id, expiresOn, certificate, result });
      return { expiresOn };
    });
  }
}
