import { Injectable } from '@nestjs/common';
import type { JudgeRepair as Request } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { AcceptanceEntity } from './acceptance.entity.js';

/** Accepts or refuses a repair as it is recorded now. The database refuses one who did it. */
@Injectable()
export class JudgeRepair {
  constructor(private readonly record: RecordFact) {}

  run(repair: string, request: Request): Promise<Receipt<{ accepted: boolean }>> {
    return this.record.run('repair judged', { ...request, repair }, async (fact) => {
      const done = await findStanding<{ id: string; root: string; makers: string[] }>(fact.tx, 'repair', repair);
      const [row] = await fact.tx.query<[{ turn: number }]>(
        `select count(*)::int + 1 as turn from fact.acceptance a where a.repair_id = $1 and not (${standing('a')})`,
        [done.id],
      );
      await fact.insert(AcceptanceEntity, {
        repairId: done.id,
        makers: done.makers,
        acceptedBy: fact.author.personId,
        accepted: request.accepted,
        note: request.note ?? null,
        turn: row.turn,
      });
      return { accepted: request.accepted };
    });
  }
}
