import { Injectable } from '@nestjs/common';
import type { RecordRepair as Request, Stops } from '@hull-record/contracts';
import { findPeople } from '../platform/facts/author.js';
import type { Fact, Found } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { Rehearse } from '../platform/facts/rehearse.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { nextNumber } from '../platform/marks/marks.js';
import { InvalidRequest } from '../platform/refusals.js';
import { totalKg, writeUsed } from '../platform/used/write-used.js';
import { RepairDefectEntity } from './repair-defect.entity.js';
import { RepairEntity } from './repair.entity.js';

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
    const defects = await findDefects(fact, partId, request.defects);
    // Nobody here did an outside repair: whoever recorded it stands for it, and another person accepts it.
    const makers =
      request.outside === undefined
        ? [...(await findPeople(fact.tx, request.doneBy, (i) => `/doneBy/${i}`))].sort()
        : [fact.author.personId];
    const number = await nextNumber(fact, 'repair', partId);
    const id = await fact.insert(RepairEntity, {
      partId,
      number,
      makers,
      procedure: request.procedure,
      taperRatio: request.taperRatio ?? null,
      grindOutMm: request.grindOutMm ?? null,
      geometry: request.geometry ?? null,
      plies: request.plies,
      outside: request.outside ?? null,
    });
    await fact.insertMany(
      RepairDefectEntity,
      defects.map((defectId) => ({ repairId: id, defectId })),
    );
    const taken = await writeUsed(fact, { kind: 'repair', id, partId }, request.used);
    return { mark: `R${number}`, kg: totalKg(taken), ...fact.found() };
  }
}

/** Defects of this part, by the ids of any of their versions. */
const findDefects = async (fact: Fact, partId: string, asked: readonly string[]): Promise<readonly string[]> => {
  const ids = asked.map((id) => id.toLowerCase());
  const found = await fact.tx.query<{ asked: string; root: string }[]>(
    `select asked.id as asked, d.root from unnest($1::uuid[]) asked(id)
     join fact.defect any_version on any_version.id = asked.id
     join fact.defect d on d.root = any_version.root and d.part_id = $2 and ${standing('d')}`,
    [ids, partId],
  );
  const roots = new Map(found.map((row) => [row.asked, row.root]));
  const missing = ids.flatMap((id, i) =>
    roots.has(id) ? [] : [{ pointer: `/defects/${i}`, detail: `There is no defect ${id} on this part.` }],
  );
  if (missing.length > 0) throw new InvalidRequest(missing);
  return ids.map((id) => roots.get(id) as string);
};
