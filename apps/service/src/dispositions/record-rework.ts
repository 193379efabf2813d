import { Injectable } from '@nestjs/common';
import type { RecordRework as Request } from '@hull-record/contracts';
import { findPeople } from '../platform/facts/author.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { Unprocessable } from '../platform/refusals.js';
import { ReworkEntity } from './rework.entity.js';

/** Records that what a disposition asked for was done, and that whoever enters this looked at it. */
@Injectable()
export class RecordRework {
  constructor(private readonly record: RecordFact) {}

  run(disposition: string, request: Request): Promise<Receipt<{ done: true }>> {
    return this.record.run('rework inspected', { ...request, disposition }, async (fact) => {
      type Row = { id: string; root: string; disposition: string };
      const asked = await findStanding<Row>(fact.tx, 'disposition', disposition);
      if (asked.disposition !== 'rework' && asked.disposition !== 'repair')
        throw new Unprocessable(
          'no-rework-asked',
          `The disposition is ${asked.disposition}: nothing is to be reworked.`,
          '',
        );
      const makers = [...(await findPeople(fact.tx, request.doneBy, (i) => `/doneBy/${i}`))].sort();
      const [row] = await fact.tx.query<[{ turn: number }]>(
        `select count(*)::int + 1 as turn from fact.rework r where r.disposition_id = $1 and not (${standing('r')})`,
        [asked.root],
      );
      const by = { makers, inspectedBy: fact.author.personId };
      await fact.insert(ReworkEntity, { dispositionId: asked.root, ...by, note: request.note, turn: row.turn });
      return { done: true as const };
    });
  }
}
