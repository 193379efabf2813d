import { Injectable } from '@nestjs/common';
import type { FileClaim as Request } from '@hull-record/contracts';
import { assertDefectWords } from '../platform/defects/defect-words.js';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { lastDealerOf } from '../platform/life/own-hull.sql.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { assertDays, type FiledClaim, TEXTS_OF_CLAIM, writeClaim } from './write-claim.js';

/** Files a claim at the warranty desk. A claim is kept whatever the terms say; a person decides on it. */
@Injectable()
export class FileClaim {
  constructor(private readonly record: RecordFact) {}

  run(number: string, request: Request): Promise<Receipt<FiledClaim>> {
    assertDefectWords(request);
    assertDays(request);
    const write = async (fact: Fact): Promise<FiledClaim> => {
      const hullId = await findHull(fact.tx, number);
      const { dealer, ...claim } = request;
      const dealerId =
        dealer === undefined
          ? await lastDealer(fact, hullId)
          : await findByCode(fact.tx, 'dealer', fact.author.plantId, dealer, '/dealer');
      return writeClaim(fact, { ...claim, hullId, dealerId });
    };
    return this.record.run('claim filed', { ...request, number }, write, { freeTexts: TEXTS_OF_CLAIM });
  }
}

const lastDealer = async (fact: Fact, hullId: string): Promise<string | null> => {
  const [row] = await fact.tx.query<{ dealer: string | null }[]>(`select ${lastDealerOf('$1')} as dealer`, [hullId]);
  return row?.dealer ?? null;
};
