import { Injectable } from '@nestjs/common';
import type { Dispose as Request } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { assertNotMaker } from './assert-not-maker.js';
import { findStanding, type Named } from '../platform/lookups/find-standing.js';
import { DispositionEntity } from './disposition.entity.js';

/** Records what is done about a defect, a reading or a nonconformity. Use as is needs a concession, whose number is used once. */
@Injectable()
export class Dispose {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ disposition: string }>> {
    return this.record.run('disposition', request, async (fact) => {
      const about = await findStanding(fact.tx, tableOf(request.of), request.about, '/about');
      await assertNotMaker(fact, about.root);
      const [row] = await fact.tx.query<[{ turn: number }]>(
        `select count(*)::int + 1 as turn from fact.disposition o where o.of_id = $1 and not (${standing('o')})`,
        [about.root],
      );
      await fact.insert(DispositionEntity, {
        ofKind: request.of,
        ofId: about.root,
        turn: row.turn,
        disposition: request.disposition,
        concession: request.concession ?? null,
        reason: request.reason,
      });
      return { disposition: request.disposition };
    });
  }
}

const tableOf = (of: Request['of']): Named => (of === 'equipment check' ? 'equipment_check' : of);
