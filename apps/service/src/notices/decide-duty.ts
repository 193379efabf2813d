import { Injectable } from '@nestjs/common';
import type { DecideDuty as Request } from '@hull-record/contracts';
import { noticeDue } from '@hull-record/trade';
import { findPeople } from '../platform/facts/author.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findHold } from '../platform/holds/find-hold.js';
import { dayIn } from '../platform/notices/duty.sql.js';
import { Unprocessable } from '../platform/refusals.js';
import { DutyDecisionEntity } from './notice.entity.js';

/**
 * Records what was decided about the duty to notify. The record decides nothing: it keeps who decided, when the defect
 * was discovered and why, and computes dates from that.
 */
@Injectable()
export class DecideDuty {
  constructor(private readonly record: RecordFact) {}

  run(hold: string, request: Request): Promise<Receipt<{ decision: string; noticeDue: string | null }>> {
    return this.record.run('duty decided', { ...request, hold }, async (fact) => {
      const found = await findHold(fact.tx, hold);
      const [{ day }] = await fact.tx.query<[{ day: string }]>(
        `select ${dayIn('$1::timestamptz', '$2::uuid')} as day`,
        [fact.happenedAt, found.plantId],
      );
      const { decision, discoveredOn, why, rule = null, counsel = null } = request;
      if (discoveredOn > day)
        throw new Unprocessable(
          'discovered-after-decision',
          `It was decided on ${day}: it was discovered on that day at the latest.`,
          '/discoveredOn',
        );
      const [decidedBy] = await findPeople(fact.tx, [request.decidedBy], () => '/decidedBy');
      await fact.insert(DutyDecisionEntity, {
        ...{ holdId: found.id, decision, discoveredOn, decidedBy: decidedBy as string, why, rule, counsel },
      });
      return { decision, noticeDue: decision === 'none' ? null : noticeDue(discoveredOn) };
    });
  }
}
