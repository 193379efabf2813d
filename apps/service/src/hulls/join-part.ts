import { Injectable } from '@nestjs/common';
import type { JoinPart as Request } from '@hull-record/contracts';
import { findPeople } from '../platform/facts/author.js';
import type { Fact, Found } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { openIfScrapped } from '../platform/release/open-if-scrapped.js';
import { Unprocessable } from '../platform/refusals.js';
import { totalKg, writeUsed } from '../platform/used/write-used.js';
import { JointEntity } from './joint.entity.js';

/** Joins a part to a hull, with what was used to bond it. A part is in one hull at a time. */
@Injectable()
export class JoinPart {
  constructor(private readonly record: RecordFact) {}

  run(number: string, request: Request): Promise<Receipt<{ kg: number } & Found>> {
    return this.record.run('part joined', { ...request, number }, async (fact) => {
      const hullId = await findHull(fact.tx, number);
      const partId = await findByCode(fact.tx, 'part', fact.author.plantId, request.part, '/part');
      await assertSameModel(fact, hullId, partId, request.part);
      const makers = [...(await findPeople(fact.tx, request.doneBy, (i) => `/doneBy/${i}`))].sort();
      const id = await fact.insert(JointEntity, { hullId, partId, turn: await nextTurn(fact, partId), makers });
      await openIfScrapped(fact, partId, {
        rule: 'scrapped-part-joined',
        what: `Part ${request.part} was joined`,
        kind: 'joint',
        id,
      });
      const taken = await writeUsed(fact, { kind: 'joint', id, partId }, request.used);
      return { kg: totalKg(taken), ...fact.found() };
    });
  }
}

const assertSameModel = async (fact: Fact, hullId: string, partId: string, part: string): Promise<void> => {
  const same = await fact.tx.query<unknown[]>(
    'select from fact.hull h join fact.part p on p.model_id = h.model_id where h.id = $1 and p.id = $2',
    [hullId, partId],
  );
  if (same.length === 0)
    throw new Unprocessable(
      'part-of-another-model',
      `Part ${part} is of another model than the hull: check the part number.`,
      '/part',
    );
};

/** One more than the joints of the part that no longer stand: the unique key then refuses a second one that would stand. */
const nextTurn = async (fact: Fact, partId: string): Promise<number> => {
  const [row] = await fact.tx.query<{ turn: number }[]>(
    `select count(*)::int + 1 as turn from fact.joint j where j.part_id = $1 and not (${standing('j')})`,
    [partId],
  );
  return row?.turn ?? 1;
};
