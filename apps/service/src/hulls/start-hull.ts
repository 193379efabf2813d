import { Injectable } from '@nestjs/common';
import type { StartHull as Request } from '@hull-record/contracts';
import { normaliseNumber } from '@hull-record/trade';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { LifeFactEntity } from '../platform/life/life-fact.entity.js';
import { findTooling } from './find-tooling.js';
import { HullNumberEntity } from './hull-number.entity.js';
import { HullEntity } from './hull.entity.js';
import { JointEntity } from './joint.entity.js';
import { PartEntity } from './part.entity.js';

/** Starts a hull under its builder's number: the hull, its hull molding in a mold, and the two as one from the first day. */
@Injectable()
export class StartHull {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ number: string; part: string; scheduleVersion: number }>> {
    return this.record.run('hull started', request, async (fact) => {
      const kind = 'hull molding';
      const tooling = await findTooling(fact, { ...request, kind });
      const hullId = await fact.insert(HullEntity, { modelId: tooling.modelId });
      const { number } = request;
      await fact.insert(HullNumberEntity, {
        hullId,
        kind: 'hull number',
        normalised: normaliseNumber(number),
        asPrinted: number,
        reason: null,
      });
      const part = request.partNumber ?? `${number}-H`;
      const { modelId, moldId, scheduleId } = tooling;
      const partId = await fact.insert(PartEntity, { number: part, kind, modelId, moldId, scheduleId });
      await fact.insert(JointEntity, { hullId, partId, turn: 1, makers: [fact.author.personId] });
      await fact.insert(LifeFactEntity, { hullId, what: 'part started', dealerId: null, note: part });
      return { number, part, scheduleVersion: tooling.version };
    });
  }
}
