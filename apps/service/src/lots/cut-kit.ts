import { Injectable } from '@nestjs/common';
import type { CutKit as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { makeLot, type MadeLot } from '../platform/lots/make-lot.js';
import { resolveTaken } from '../platform/lots/resolve-taken.js';

/** Records a kit that was cut from rolls and sheets. */
@Injectable()
export class CutKit {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<MadeLot>> {
    return this.record.run('kit cut', request, async (fact) => {
      const inputs = await resolveTaken(fact, request.inputs, (i) => `/inputs/${i}`);
      return makeLot(fact, { code: request.code, origin: 'cut', inputs });
    });
  }
}
