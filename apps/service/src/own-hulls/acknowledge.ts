import { Injectable } from '@nestjs/common';
import type { Acknowledge as Request } from '@hull-record/contracts';
import { personNow } from '../platform/access/call.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { NotThere } from '../platform/refusals.js';
import { DealerAcknowledgedEntity } from './acknowledged.entity.js';
import { loadNews } from './own-news.query.js';

/** Records that a dealer has taken note; what another dealer was told is answered as what is not there. */
@Injectable()
export class Acknowledge {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ acknowledged: true }>> {
    return this.record.run('acknowledged', request, async (fact) => {
      const { dealerId } = personNow();
      const [told] = await loadNews(fact.tx, request.about);
      if (!told || dealerId === null) throw new NotThere('notice', request.about, '/about');
      await fact.insert(DealerAcknowledgedEntity, { dealerId, what: told.what, aboutId: told.id });
      return { acknowledged: true as const };
    });
  }
}
