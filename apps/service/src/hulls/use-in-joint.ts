import { Injectable } from '@nestjs/common';
import type { RecordUse as Request } from '@hull-record/contracts';
import type { Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { totalKg, writeUsed } from '../platform/used/write-used.js';

/** Adds what was used to a joint that is recorded already: bonding paste, tabbing, sealant. */
@Injectable()
export class UseInJoint {
  constructor(private readonly record: RecordFact) {}

  run(joint: string, request: Request): Promise<Receipt<{ kg: number } & Found>> {
    return this.record.run('used in joint', { ...request, joint }, async (fact) => {
      const found = await findStanding<{ id: string; root: string; part_id: string }>(fact.tx, 'joint', joint);
      const taken = await writeUsed(fact, { kind: 'joint', id: found.root, partId: found.part_id }, request.used);
      return { kg: totalKg(taken), ...fact.found() };
    });
  }
}
