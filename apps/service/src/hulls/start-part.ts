import { Injectable } from '@nestjs/common';
import type { StartPart as Request } from '@hull-record/contracts';
import type { Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { warnOfHeldMold } from '../platform/holds/warn-of-holds.js';
import { warnOfCare } from '../platform/molds/warn-of-care.js';
import { findTooling } from './find-tooling.js';
import { PartEntity } from './part.entity.js';

/** Starts a deck, liner, stringer grid or hatch in a mold. It belongs to no hull until it is joined to one. */
@Injectable()
export class StartPart {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ number: string; scheduleVersion: number } & Found>> {
    return this.record.run('part started', request, async (fact) => {
      const { modelId, moldId, scheduleId, version } = await findTooling(fact, request);
      await fact.insert(PartEntity, { number: request.number, kind: request.kind, modelId, moldId, scheduleId });
      await warnOfCare(fact, moldId);
      await warnOfHeldMold(fact, moldId);
      return { number: request.number, scheduleVersion: version, ...fact.found() };
    });
  }
}
