import { Injectable } from '@nestjs/common';
import type { LiftHold as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { standing } from '../platform/facts/standing.js';
import { Unprocessable } from '../platform/refusals.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { HoldLiftEntity } from '../platform/store/hold.entity.js';

interface Held {
  readonly id: string;
  readonly root: string;
  readonly kind: string;
  readonly happened_at: Date;
}

/** Lifts a hold. A safety hold is lifted by quality alone. */
@Injectable()
export class LiftHold {
  constructor(private readonly record: RecordFact) {}

  run(hold: string, request: Request): Promise<Receipt<{ lifted: true }>> {
    return this.record.run('hold lifted', { ...request, hold }, async (fact) => {
      const found = await findStanding<Held>(fact.tx, 'hold', hold);
      if (fact.happenedAt < found.happened_at)
        throw new Unprocessable(
          'lift-before-hold',
          `The hold is from ${found.happened_at.toISOString()} on: a lift cannot be before it. If it never should have been, withdraw it.`,
          '/happenedAt',
        );
      await fact.insert(HoldLiftEntity, {
        holdId: found.root,
        turn: await nextTurn(fact, found.root),
        reason: request.reason,
      });
      return { lifted: true as const };
    });
  }
}

/** One more than the lifts of the hold that no longer stand: the unique key refuses a second that would stand. */
const nextTurn = async (fact: Fact, hold: string): Promise<number> => {
  const [row] = await fact.tx.query<[{ turn: number }]>(
    `select count(*)::int + 1 as turn from fact.hold_lift l where l.hold_id = $1 and not (${standing('l')})`,
    [hold],
  );
  return row.turn;
};
