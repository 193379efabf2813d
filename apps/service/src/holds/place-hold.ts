import { Injectable } from '@nestjs/common';
import type { HoldPlaced, PlaceHold as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { ON_NOTHING } from '../platform/store/hold.entity.js';
import { findLotOrContainer } from '../platform/store/find-lot-or-container.js';
import { InvalidRequest } from '../platform/refusals.js';
import { scopeAsked, writeHold } from './write-hold.js';

/**
 * Holds a lot, or one container of it, from a time on. What was used after that time, and recorded before this, comes to
 * light. It is recorded alone in the plant, so that a use at the same moment sees the hold or is seen by it.
 */
@Injectable()
export class PlaceHold {
  constructor(private readonly record: RecordFact) {}

  run(lot: string, request: Request): Promise<Receipt<HoldPlaced>> {
    if (request.from !== undefined && request.until !== undefined && request.from > request.until)
      throw new InvalidRequest([{ pointer: '/until', detail: 'must not be before it begins' }]);
    return this.record.run(
      'hold placed',
      { ...request, lot },
      async (fact) => {
        const held = await findLotOrContainer(fact, lot, request.container);
        const on = { ...ON_NOTHING, lotId: held.lot.id, containerId: held.containerId };
        return writeHold(fact, on, request, scopeAsked(request));
      },
      { genealogy: 'alone' },
    );
  }
}
