import { Injectable } from '@nestjs/common';
import type { NarrowHold as Request } from '@hull-record/contracts';
import { isSameScope, widerFields, type HoldScope } from '@hull-record/trade';
import type { Fact } from '../platform/facts/fact.js';
import { assertNotBefore } from '../platform/facts/assert-not-before.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findHold, type FoundHold } from '../platform/holds/find-hold.js';
import { reachOfHold } from '../platform/holds/reach-of-hold.js';
import { Unprocessable } from '../platform/refusals.js';
import { assertOpen } from './assert-open.js';
import { writeScope } from './write-hold.js';

/** Narrows a hold, with the reason. What was said of hulls that it leaves out stays. */
@Injectable()
export class NarrowHold {
  constructor(private readonly record: RecordFact) {}

  run(hold: string, request: Request): Promise<Receipt<{ reached: number; below: number }>> {
    return this.record.run('hold narrowed', { ...request, hold }, async (fact) => {
      // One after the other: the second narrows what the first left, or is told that it is so already.
      await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 11))', [
        (await findHold(fact.tx, hold)).id,
      ]);
      const found = await findHold(fact.tx, hold);
      assertOpen(found);
      assertNotBefore(fact, found.happenedAt, 'The hold');
      const scope = narrowed(found, request);
      await writeScope(fact, found.id, await nextTurn(fact, found.id), scope, request.reason);
      const reach = await reachOfHold(fact.tx, found, scope);
      const reached = reach.filter((each) => each.reached).length;
      return { reached, below: reach.length - reached };
    });
  }
}

const narrowed = ({ scope: before, lotId }: FoundHold, request: Request): HoldScope => {
  if (request.minShare !== undefined && lotId === null)
    throw new Unprocessable(
      'no-share',
      'There are shares of lots alone: narrow this hold by zone or period.',
      '/minShare',
    );
  const after: HoldScope = {
    minShare: request.minShare ?? before.minShare,
    zone: request.zone ?? before.zone,
    from: request.from ?? before.from,
    until: request.until ?? before.until,
  };
  const [wider] = widerFields(before, after);
  if (wider !== undefined)
    throw new Unprocessable(
      'not-narrower',
      'A hold is only narrowed. If it was narrowed too far, withdraw the narrowing; to hold more, place another.',
      `/${wider}`,
    );
  if (isSameScope(before, after))
    throw new Unprocessable('not-narrower', 'This is how far the hold reaches already.', '/minShare');
  return after;
};

/** One more than any turn so far: of two who narrow at once, the unique key refuses the second. */
const nextTurn = async (fact: Fact, hold: string): Promise<number> => {
  const [row] = await fact.tx.query<[{ turn: number }]>(
    // The first turn belongs to the placing, also of holds from before there were scopes.
    'select greatest(coalesce(max(s.turn), 1), 1) + 1 as turn from fact.hold_scope s where s.hold_id = $1',
    [hold],
  );
  return row.turn;
};
