import { Injectable } from '@nestjs/common';
import type { StartHull as Request } from '@hull-record/contracts';
import { normaliseNumber } from '@hull-record/trade';
import { Conflict, InvalidRequest } from '../platform/refusals.js';
import type { Fact, Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { LifeFactEntity } from '../platform/life/life-fact.entity.js';
import { warnOfHeldMold } from '../platform/holds/warn-of-holds.js';
import { warnOfCare } from '../platform/molds/warn-of-care.js';
import { findTooling } from './find-tooling.js';
import { HullNumberEntity } from './hull-number.entity.js';
import { HullEntity } from './hull.entity.js';
import { JointEntity } from './joint.entity.js';
import { PartEntity } from './part.entity.js';

/** Starts a hull under its builder's number: the hull, its hull molding in a mold, and the two as one from the first day. */
@Injectable()
export class StartHull {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ number: string; part: string; scheduleVersion: number } & Found>> {
    const normalised = readNumber(request.number);
    return this.record.run('hull started', request, async (fact) => {
      const kind = 'hull molding';
      const tooling = await findTooling(fact, { ...request, kind });
      const hullId = await fact.insert(HullEntity, { modelId: tooling.modelId });
      const { number } = request;
      await fact.insert(HullNumberEntity, {
        hullId,
        kind: 'hull number',
        normalised,
        asPrinted: number,
        reason: null,
        authority: null,
      });
      const part = request.partNumber ?? `${number}-H`;
      await assertPartNumberFree(fact, part);
      const { modelId, moldId, scheduleId } = tooling;
      const partId = await fact.insert(PartEntity, { number: part, kind, modelId, moldId, scheduleId });
      await fact.insert(JointEntity, { hullId, partId, turn: 1, makers: [fact.author.personId] });
      await fact.insert(LifeFactEntity, { hullId, what: 'part started', dealerId: null, market: null, note: part });
      await warnOfCare(fact, moldId);
      await warnOfHeldMold(fact, moldId);
      return { number, part, scheduleVersion: tooling.version, ...fact.found() };
    });
  }
}

/** Numbers are told apart by their letters and digits alone: one that has none is no number. */
const readNumber = (number: string): string => {
  const normalised = normaliseNumber(number);
  if (normalised !== '') return normalised;
  throw new InvalidRequest([{ pointer: '/number', detail: 'has neither letter nor digit: write the hull number' }]);
};

/** The part number may follow from the hull number, so the refusal names the field by which it is given another. */
const assertPartNumberFree = async (fact: Fact, part: string): Promise<void> => {
  const taken = await fact.tx.query<unknown[]>('select from fact.part where plant_id = $1 and number = $2', [
    fact.author.plantId,
    part,
  ]);
  if (taken.length > 0)
    throw new Conflict('code-taken', `Part number ${part} is in use: give the hull molding another.`, '/partNumber');
};
