import { Injectable } from '@nestjs/common';
import type { MarkClaim as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { keepText } from '../platform/texts/keep-text.js';
import { ClaimMarkEntity } from './claim.entity.js';

/** Says how a claim came to light when that became known later; a prompted one is left out where hulls are compared. */
@Injectable()
export class MarkClaim {
  constructor(private readonly record: RecordFact) {}

  run(claim: string, request: Request): Promise<Receipt<{ prompted: boolean }>> {
    const write = async (fact: Fact): Promise<{ prompted: boolean }> => {
      const { root } = await findStanding(fact.tx, 'claim', claim);
      const { foundBy } = request;
      const reason = await keepText(fact, request.reason);
      await fact.insert(ClaimMarkEntity, { claimId: root, foundBy, reason });
      return { prompted: foundBy !== 'owner or dealer' };
    };
    return this.record.run('claim marked', { ...request, claim }, write, { freeTexts: ['reason'] });
  }
}
