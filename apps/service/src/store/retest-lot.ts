import { Injectable } from '@nestjs/common';
import type { RetestLot as Request } from '@hull-record/contracts';
import type { Fact, OpenedNonconformity } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findLotOrContainer } from '../platform/store/find-lot-or-container.js';
import { LotRetestEntity } from './lot-facts.entity.js';

/**
 * Records a retest by quality that gives a lot another last day of use, from then on. What was used after an earlier day
 * than was thought comes to light.
 */
@Injectable()
export class RetestLot {
  constructor(private readonly record: RecordFact) {}

  run(
    lot: string,
    request: Request,
  ): Promise<Receipt<{ expiresOn: string; nonconformities: readonly OpenedNonconformity[] }>> {
    const decide = async (
      fact: Fact,
    ): Promise<{ expiresOn: string; nonconformities: readonly OpenedNonconformity[] }> => {
      const { expiresOn, certificate, result } = request;
      const of = await findLotOrContainer(fact, lot, undefined);
      await fact.insert(LotRetestEntity, { lotId: of.lot.id, expiresOn, certificate, result });
      return { expiresOn, nonconformities: fact.nonconformities };
    };
    return this.record.run('lot retested', { ...request, lot }, decide, { genealogy: 'alone' });
  }
}
