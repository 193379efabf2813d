import { Injectable } from '@nestjs/common';
import type { MakeMix as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { makeLot, type MadeLot } from '../platform/lots/make-lot.js';
import { resolveTaken } from '../platform/lots/resolve-taken.js';

/** Records a bucket that was mixed. Promoter goes into the resin first and catalyst last, never the two together. */
@Injectable()
export class MakeMix {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<MadeLot>> {
    return this.record.run('bucket mixed', request, async (fact) => {
      const inputs = await resolveTaken(fact, request.inputs, (i) => `/inputs/${i}`);
      return makeLot(fact, { code: request.code, origin: 'mixed', inputs });
    });
  }
}
