import { Injectable } from '@nestjs/common';
import type { RecordTouchUp as Request } from '@hull-record/contracts';
import { isDefectKind } from '@hull-record/trade';
import { findPeople } from '../platform/facts/author.js';
import type { Fact, Found } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { nextNumber } from '../platform/marks/marks.js';
import { InvalidRequest } from '../platform/refusals.js';
import { totalKg, writeUsed } from '../platform/used/write-used.js';
import { limitsThen, overLimits } from './touch-up-limits.js';
import { TouchUpEntity } from './touch-up.entity.js';

/**
 * Records many small cosmetic spots in one entry. What is over the plant's limit is kept as it was done, and is a repair:
 * a nonconformity stands until quality has it repaired or gives a concession.
 */
@Injectable()
export class RecordTouchUp {
  constructor(private readonly record: RecordFact) {}

  run(part: string, request: Request): Promise<Receipt<{ mark: string; kg: number } & Found>> {
    assertKinds(request);
    return this.record.run('touch-up recorded', { ...request, part }, async (fact) => {
      const partId = await findByCode(fact.tx, 'part', fact.author.plantId, part);
      const makers = [...(await findPeople(fact.tx, request.doneBy, (i) => `/doneBy/${i}`))].sort();
      const number = await nextNumber(fact, 'touch_up', partId);
      const before = await spotsBefore(fact, partId);
      const { spots, note = null } = request;
      const id = await fact.insert(TouchUpEntity, { partId, number, makers, spots, note });
      const taken = await writeUsed(fact, { kind: 'touch-up', id, partId }, request.used);
      for (const detail of overLimits(spots, before, await limitsThen(fact)))
        await fact.open({
          rule: 'touch-up-over-limit',
          detail: `T${number}: ${detail}`,
          aboutKind: 'touch-up',
          aboutId: id,
          partId,
        });
      return { mark: `T${number}`, kg: totalKg(taken), ...fact.found() };
    });
  }
}

const assertKinds = ({ spots }: Request): void => {
  const wrong = spots.flatMap(({ kind }, i) =>
    isDefectKind(kind)
      ? []
      : [{ pointer: `/spots/${i}/kind`, detail: `${kind} is not a kind of defect: see GET /api/defect-kinds` }],
  );
  if (wrong.length > 0) throw new InvalidRequest(wrong);
};

const spotsBefore = async (fact: Fact, partId: string): Promise<number> => {
  const [row] = await fact.tx.query<[{ spots: number }]>(
    `select coalesce(sum((s ->> 'count')::int), 0)::int as spots from fact.touch_up t, jsonb_array_elements(t.spots) s
     where t.part_id = $1 and ${standing('t')}`,
    [partId],
  );
  return row.spots;
};
