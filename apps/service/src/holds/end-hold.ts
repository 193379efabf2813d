import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import type { FoundHold } from '../platform/holds/find-hold.js';
import { HoldLiftEntity } from '../platform/store/hold.entity.js';
import { Unprocessable } from '../platform/refusals.js';

/** Writes the end of a hold: lifted, or closed. */
export const endHold = async (fact: Fact, found: FoundHold, reason: string, closed: boolean): Promise<void> => {
  if (fact.happenedAt < found.happenedAt)
    throw new Unprocessable(
      'lift-before-hold',
      `The hold is from ${found.happenedAt.toISOString()} on: it cannot end before it. If it never should have been, withdraw it.`,
      '/happenedAt',
    );
  await fact.insert(HoldLiftEntity, { holdId: found.id, turn: await nextTurn(fact, found.id), reason, closed });
};

/** One more than the ends of the hold that no longer stand: the unique key refuses a second that would stand. */
const nextTurn = async (fact: Fact, hold: string): Promise<number> => {
  const [row] = await fact.tx.query<[{ turn: number }]>(
    `select count(*)::int + 1 as turn from fact.hold_lift l where l.hold_id = $1 and not (${standing('l')})`,
    [hold],
  );
  return row.turn;
};
