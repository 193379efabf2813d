import { Injectable } from '@nestjs/common';
import type { JudgeRepair as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { TouchUpAcceptanceEntity } from './touch-up-acceptance.entity.js';

/** Accepts or refuses all spots of one entry at once. The database refuses one who did them. */
@Injectable()
export class JudgeTouchUp {
  constructor(private readonly record: RecordFact) {}

  run(touchUp: string, request: Request): Promise<Receipt<{ accepted: boolean }>> {
    return this.record.run('touch-up judged', { ...request, touchUp }, async (fact) => {
      const done = await findStanding<{ id: string; root: string; makers: string[] }>(fact.tx, 'touch_up', touchUp);
      const [row] = await fact.tx.query<[{ turn: number }]>(
        `select count(*)::int + 1 as turn from fact.touch_up_acceptance a where a.touch_up_id = $1 and not (${standing('a')})`,
        [done.id],
      );
      const { accepted, note = null } = request;
      await fact.insert(TouchUpAcceptanceEntity, {
        ...{ touchUpId: done.id, makers: done.makers, acceptedBy: fact.author.personId },
        ...{ accepted, note, turn: row.turn },
      });
      return { accepted };
    });
  }
}
