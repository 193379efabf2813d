import { Injectable } from '@nestjs/common';
import type { GiveNotice as Request } from '@hull-record/contracts';
import { assertNotBefore } from '../platform/facts/assert-not-before.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findHold } from '../platform/holds/find-hold.js';
import { loadHeldHulls } from '../platform/holds/load-held-hulls.js';
import { loadDuty } from '../platform/notices/load-duty.js';
import { loadNoticeState } from '../platform/notices/load-notice-state.js';
import { Conflict } from '../platform/refusals.js';
import { NoticeEntity } from './notice.entity.js';

/** Writes a notice, once a duty to give it was decided. */
@Injectable()
export class GiveNotice {
  constructor(private readonly record: RecordFact) {}

  run(hold: string, request: Request): Promise<Receipt<{ code: string; recipients: number }>> {
    return this.record.run('notice written', { ...request, hold }, async (fact) => {
      const found = await findHold(fact.tx, hold);
      const held = await loadHeldHulls(fact.tx, found);
      const { discoveredOn } = await loadDuty(fact.tx, found.id, held);
      if (discoveredOn === null)
        throw new Conflict(
          'no-duty',
          'No duty to notify is decided for this hold: the responsible person decides it first.',
        );
      assertNotBefore(fact, found.happenedAt, 'The hold');
      const { code, contents } = request;
      await fact.insert(NoticeEntity, { holdId: found.id, code, contents });
      const { addressees } = await loadNoticeState(fact.tx, null, held, discoveredOn);
      return { code, recipients: addressees.length };
    });
  }
}
