import { Injectable } from '@nestjs/common';
import type { MarkClaim as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { ClaimMarkEntity } from './claim.entity.js';

/** Says how a claim came to light when that became known later; a prompted one is left out where hulls are compared. */
@Injectable()
export class MarkClaim {
  constructor(private readonly record: RecordFact) {}

  run(claim: string, request: Request): Promise<Receipt<{ prompted: boolean }>> {
    return this.record.run('claim marked', { ...request, claim }, async (fact) => {
      const { root } = await findStanding(fact.tx, 'claim', claim);
      const { foundBy, reason } = request;
      await fact.insert(ClaimMarkEntity, { claimId: root, foundBy, reason });
      return { prompted: foundBy !== 'owner or dealer' };
    });
  }
}
