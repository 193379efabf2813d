import { Injectable } from '@nestjs/common';
import type { FileOwnClaim as Request } from '@hull-record/contracts';
import { assertDefectWords } from '../platform/defects/defect-words.js';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findOwnHull } from '../platform/life/find-own-hull.js';
import { assertDays, type FiledClaim, TEXTS_OF_CLAIM, writeClaim } from './write-claim.js';

/** Files a claim as the dealer of the hull, for an own hull alone. Whether it was prompted the desk says. */
@Injectable()
export class FileOwnClaim {
  constructor(private readonly record: RecordFact) {}

  run(number: string, request: Request): Promise<Receipt<FiledClaim>> {
    assertDefectWords(request);
    assertDays(request);
    const write = async (fact: Fact): Promise<FiledClaim> => {
      const own = await findOwnHull(fact.tx, number);
      return writeClaim(fact, { ...request, ...own, foundBy: 'owner or dealer' });
    };
    return this.record.run('claim filed', { ...request, number }, write, { freeTexts: TEXTS_OF_CLAIM });
  }
}
