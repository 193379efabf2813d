import { Injectable } from '@nestjs/common';
import type { InspectRepairAgain as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { ReInspectionEntity } from './re-inspection.entity.js';

/** Records that a repair was inspected again. When it failed, its defects are open again. */
@Injectable()
export class InspectRepairAgain {
  constructor(private readonly record: RecordFact) {}

  run(repair: string, request: Request): Promise<Receipt<{ passed: boolean }>> {
    return this.record.run('repair inspected again', { ...request, repair }, async (fact) => {
      const done = await findStanding<{ id: string; root: string; makers: string[] }>(fact.tx, 'repair', repair);
      const { passed, note = null } = request;
      const by = { makers: done.makers, inspectedBy: fact.author.personId };
      await fact.insert(ReInspectionEntity, { repairId: done.id, ...by, passed, note });
      return { passed };
    });
  }
}
