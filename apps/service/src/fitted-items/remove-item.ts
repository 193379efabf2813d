import { Injectable } from '@nestjs/common';
import type { RemoveItem as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { ItemRemovedEntity } from './fitted-item.entity.js';

/** Records that a fitted item was taken off. */
@Injectable()
export class RemoveItem {
  constructor(private readonly record: RecordFact) {}

  run(item: string, request: Request): Promise<Receipt<{ removed: true }>> {
    return this.record.run('item removed', { ...request, item }, async (fact) => {
      const fitted = await findStanding(fact.tx, 'fitted_item', item);
      const [row] = await fact.tx.query<[{ turn: number }]>(
        `select count(*)::int + 1 as turn from fact.item_removed r where r.fitted_item_id = $1 and not (${standing('r')})`,
        [fitted.root],
      );
      await fact.insert(ItemRemovedEntity, { fittedItemId: fitted.root, turn: row.turn, reason: request.reason });
      return { removed: true as const };
    });
  }
}
