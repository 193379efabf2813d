import { Injectable } from '@nestjs/common';
import type { ReturnMailing as Request } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { assertNotBefore } from '../platform/facts/assert-not-before.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { MailingReturnedEntity } from './notice.entity.js';

interface Mailed {
  readonly id: string;
  readonly root: string;
  readonly happened_at: Date;
}

/** Records that a letter came back: the name or address was out of date. */
@Injectable()
export class ReturnMailing {
  constructor(private readonly record: RecordFact) {}

  run(mailing: string, request: Request): Promise<Receipt<{ returned: true }>> {
    return this.record.run('letter returned', { ...request, mailing }, async (fact) => {
      const { root, happened_at: mailedAt } = await findStanding<Mailed>(fact.tx, 'notice_mailing', mailing);
      assertNotBefore(fact, mailedAt, 'The letter');
      const [{ turn }] = await fact.tx.query<[{ turn: number }]>(
        `select count(*)::int + 1 as turn from fact.mailing_returned b where b.mailing_id = $1 and not (${standing('b')})`,
        [root],
      );
      await fact.insert(MailingReturnedEntity, { mailingId: root, turn, why: request.why });
      return { returned: true as const };
    });
  }
}
