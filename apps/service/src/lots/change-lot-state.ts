import { Injectable } from '@nestjs/common';
import type { ChangeLotState as Request } from '@hull-record/contracts';
import type { Fact, OpenedNonconformity } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findLots } from '../platform/lots/find-lots.js';
import { NotThere } from '../platform/refusals.js';
import { LotStateEntity } from './lot-state.entity.js';

/**
 * Says that a lot is quarantined, released, held or rejected from a time on. State is read from these facts.
 *
 * Anything but a release is recorded alone in the plant, so that a use at the same moment sees it or is seen by it.
 */
@Injectable()
export class ChangeLotState {
  constructor(private readonly record: RecordFact) {}

  run(
    lot: string,
    request: Request,
  ): Promise<Receipt<{ state: string; nonconformities: readonly OpenedNonconformity[] }>> {
    const { state, reason } = request;
    const decide = async (fact: Fact): Promise<{ state: string; nonconformities: readonly OpenedNonconformity[] }> => {
      const found = (await findLots(fact.tx, fact.author.plantId, [lot], fact.happenedAt)).get(lot);
      if (!found) throw new NotThere('lot', lot);
      await fact.insert(LotStateEntity, { lotId: found.id, state, reason });
      return { state, nonconformities: fact.nonconformities };
    };
    return this.record.run('lot state changed', { ...request, lot }, decide, {
      genealogy: state === 'released' ? 'one of many' : 'alone',
    });
  }
}
