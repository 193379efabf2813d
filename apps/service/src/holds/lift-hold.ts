import { Injectable } from '@nestjs/common';
import type { LiftHold as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findHold } from '../platform/holds/find-hold.js';
import { Conflict } from '../platform/refusals.js';
import { endHold } from './end-hold.js';

/**
 * Lifts a hold, since what was suspected is not so: quality alone does. Once the fault was found in a hull, there is no
 * way but to dispose of every hull and close the hold.
 */
@Injectable()
export class LiftHold {
  constructor(private readonly record: RecordFact) {}

  run(hold: string, request: Request): Promise<Receipt<{ lifted: true }>> {
    return this.record.run(
      'hold lifted',
      { ...request, hold },
      async (fact) => {
        const found = await findHold(fact.tx, hold);
        await assertNothingFound(fact, found.id);
        await endHold(fact, found, request.reason, false);
        return { lifted: true as const };
      },
      { gate: 'closed' },
    );
  }
}

const assertNothingFound = async (fact: Fact, hold: string): Promise<void> => {
  const found = await fact.tx.query<unknown[]>(
    `select from fact.hold_disposition d where d.hold_id = $1 and d.what in ('found', 'repaired') and ${standing('d')} limit 1`,
    [hold],
  );
  if (found.length > 0)
    throw new Conflict(
      'fault-found',
      'The fault was found in a hull of this hold: dispose of every hull, and close it.',
    );
};
