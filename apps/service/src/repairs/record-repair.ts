import { Injectable } from '@nestjs/common';
import type { RecordRepair as Request, Stops } from '@hull-record/contracts';
import { findPeople } from '../platform/facts/author.js';
import type { Fact, Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { Rehearse } from '../platform/facts/rehearse.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { writeRepair } from './write-repair.js';

export interface RecordedRepair extends Found {
  readonly mark: string;
  readonly kg: number;
}

/** Records a repair as it was done, with what was used. A person who did not do it accepts it afterwards. */
@Injectable()
export class RecordRepair {
  constructor(
    private readonly record: RecordFact,
    private readonly rehearse: Rehearse,
  ) {}

  run(part: string, request: Request): Promise<Receipt<RecordedRepair>> {
    return this.record.run('repair recorded', { ...request, part }, (fact) => this.decide(fact, part, request));
  }

  /** Says what recording it would find wrong, and records nothing. */
  check(part: string, request: Request): Promise<Stops> {
    return this.rehearse.run(request, (fact) => this.decide(fact, part, request));
  }

  private async decide(fact: Fact, part: string, request: Request): Promise<RecordedRepair> {
    const partId = await findByCode(fact.tx, 'part', fact.author.plantId, part);
    // Nobody here did an outside repair: whoever recorded it stands for it, and another person accepts it.
    const makers =
      request.outside === undefined
        ? [...(await findPeople(fact.tx, request.doneBy, (i) => `/doneBy/${i}`))].sort()
        : [fact.author.personId];
    const told = { ...request, partId, makers, outside: request.outside ?? null, dealerId: null, spots: [] };
    const { mark, kg } = await writeRepair(fact, told);
    return { mark, kg, ...fact.found() };
  }
}
