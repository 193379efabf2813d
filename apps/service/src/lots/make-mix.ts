import { Injectable } from '@nestjs/common';
import type { MakeMix as Request, Stops } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { Rehearse } from '../platform/facts/rehearse.js';
import { openUnsafeMix } from './open-unsafe-mix.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { makeLot, type MadeLot } from '../platform/lots/make-lot.js';
import { resolveTaken } from '../platform/lots/resolve-taken.js';

/** Records a bucket that was mixed. Promoter goes into the resin first and catalyst last, never the two together. */
@Injectable()
export class MakeMix {
  constructor(
    private readonly record: RecordFact,
    private readonly rehearse: Rehearse,
  ) {}

  run(request: Request): Promise<Receipt<MadeLot>> {
    return this.record.run('bucket mixed', request, (fact) => this.decide(fact, request));
  }

  /** Says what recording it would find wrong, and records nothing. */
  check(request: Request): Promise<Stops> {
    return this.rehearse.run(request, (fact) => this.decide(fact, request));
  }

  private async decide(fact: Fact, request: Request): Promise<MadeLot> {
    const inputs = await resolveTaken(fact, request.inputs, (i) => `/inputs/${i}`);
    const made = await makeLot(fact, { code: request.code, origin: 'mixed', inputs });
    await openUnsafeMix(fact, inputs);
    return { ...made, ...fact.found() };
  }
}
