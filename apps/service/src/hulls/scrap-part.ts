import { Injectable } from '@nestjs/common';
import type { ScrapPart as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { PartScrappedEntity } from './part-scrapped.entity.js';

/** Records that a part was scrapped, in whatever state it was. */
@Injectable()
export class ScrapPart {
  constructor(private readonly record: RecordFact) {}

  run(part: string, request: Request): Promise<Receipt<{ number: string }>> {
    return this.record.run('part scrapped', { ...request, part }, async (fact) => {
      const partId = await findByCode(fact.tx, 'part', fact.author.plantId, part);
      const [row] = await fact.tx.query<[{ turn: number }]>(
        `select count(*)::int + 1 as turn from fact.part_scrapped s where s.part_id = $1 and not (${standing('s')})`,
        [partId],
      );
      await fact.insert(PartScrappedEntity, { partId, turn: row.turn, reason: request.reason });
      return { number: part };
    });
  }
}
