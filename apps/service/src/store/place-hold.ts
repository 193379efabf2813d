import { Injectable } from '@nestjs/common';
import type { PlaceHold as Request } from '@hull-record/contracts';
import type { OpenedNonconformity } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findLotOrContainer } from './find-lot-or-container.js';
import { HoldEntity } from '../platform/store/hold.entity.js';

/**
 * Holds a lot, or one container of it, from a time on. What was used after that time, and recorded before this, comes to
 * light. It is recorded alone in the plant, so that a use at the same moment sees the hold or is seen by it.
 */
@Injectable()
export class PlaceHold {
  constructor(private readonly record: RecordFact) {}

  run(
    lot: string,
    request: Request,
  ): Promise<Receipt<{ kind: string; nonconformities: readonly OpenedNonconformity[] }>> {
    return this.record.run(
      'hold placed',
      { ...request, lot },
      async (fact) => {
        const held = await findLotOrContainer(fact, lot, request.container);
        const { kind, reason } = request;
        await fact.insert(HoldEntity, { lotId: held.lot.id, containerId: held.containerId, kind, reason });
        return { kind, nonconformities: fact.nonconformities };
      },
      { genealogy: 'alone' },
    );
  }
}
