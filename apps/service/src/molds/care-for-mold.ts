import { Injectable } from '@nestjs/common';
import type { CareForMold as Request } from '@hull-record/contracts';
import { findPeople } from '../platform/facts/author.js';
import type { Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { totalKg, writeUsed } from '../platform/used/write-used.js';
import { MoldCareEntity } from './mold-care.entity.js';

/** Records care of a mold, with the release and cleaner used. What is used so is in no part, but in the balance. */
@Injectable()
export class CareForMold {
  constructor(private readonly record: RecordFact) {}

  run(mold: string, request: Request): Promise<Receipt<{ what: string; kg: number } & Found>> {
    return this.record.run(`mold ${request.what}`, { ...request, mold }, async (fact) => {
      const moldId = await findByCode(fact.tx, 'mold', fact.author.plantId, mold);
      const makers = [...(await findPeople(fact.tx, request.doneBy, (i) => `/doneBy/${i}`))].sort();
      const { what, duePulls = null, dueOn = null, note = null } = request;
      const id = await fact.insert(MoldCareEntity, { moldId, what, makers, duePulls, dueOn, note });
      const taken = await writeUsed(fact, { kind: 'mold care', id, partId: null }, request.used);
      return { what, kg: totalKg(taken), ...fact.found() };
    });
  }
}
