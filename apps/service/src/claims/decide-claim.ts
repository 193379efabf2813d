import { Injectable } from '@nestjs/common';
import type { ClaimTerm, DecideClaim as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { termOfHull } from '../platform/warranty/term-of-hull.js';
import { ClaimDecisionEntity } from './claim.entity.js';
import { keepText } from '../platform/texts/keep-text.js';
import { findClaim } from './find-claim.js';

/** Decides on a claim. What the terms say is kept with the decision; they bind nobody, a person gives the reason. */
@Injectable()
export class DecideClaim {
  constructor(private readonly record: RecordFact) {}

  run(claim: string, request: Request): Promise<Receipt<{ decision: string; term: ClaimTerm }>> {
    const write = async (fact: Fact): Promise<{ decision: string; term: ClaimTerm }> => {
      const { root, hullId, kind, reportedOn } = await findClaim(fact.tx, claim);
      const term = await termOfHull(fact.tx, hullId, { kind, reportedOn });
      const { decision, paidPercent = null, hours = null, cost } = request;
      const reason = await keepText(fact, request.reason);
      await fact.insert(ClaimDecisionEntity, {
        ...{ claimId: root, decision, reason, paidPercent, hours, term },
        ...{ costAmount: cost?.amount ?? null, costCurrency: cost?.currency ?? null },
      });
      return { decision, term };
    };
    return this.record.run(`claim: ${request.decision}`, { ...request, claim }, write, { freeTexts: ['reason'] });
  }
}
