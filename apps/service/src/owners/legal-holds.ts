import { Injectable } from '@nestjs/common';
import type { EndLegalHold, PlaceLegalHold } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { isUuid } from '../platform/ids.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { NotThere } from '../platform/refusals.js';
import { LegalHoldEndedEntity, LegalHoldEntity } from './owner.entity.js';

/** Places and ends legal holds on the personal data of a hull. */
@Injectable()
export class LegalHolds {
  constructor(private readonly record: RecordFact) {}

  place(number: string, request: PlaceLegalHold): Promise<Receipt<{ placed: true }>> {
    return this.record.run('legal hold placed', { ...request, number }, async (fact) => {
      await fact.insert(LegalHoldEntity, { hullId: await findHull(fact.tx, number), reason: request.reason });
      return { placed: true as const };
    });
  }

  end(hold: string, request: EndLegalHold): Promise<Receipt<{ ended: true }>> {
    return this.record.run('legal hold ended', { ...request, hold }, async (fact) => {
      const found = isUuid(hold) ? await fact.tx.findOneBy(LegalHoldEntity, { id: hold }) : null;
      if (!found || found.plantId !== fact.author.plantId) throw new NotThere('legal hold', hold);
      await fact.insert(LegalHoldEndedEntity, { legalHoldId: found.id, reason: request.reason });
      return { ended: true as const };
    });
  }
}
