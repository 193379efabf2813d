import { Injectable } from '@nestjs/common';
import type { OpenCase as Request } from '@hull-record/contracts';
import { findPeople } from '../platform/facts/author.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { CaseFileEntity } from './case.entity.js';

/** Opens a case. One at the direction of counsel is for those named, and whoever opened it. */
@Injectable()
export class OpenCase {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ code: string }>> {
    return this.record.run('case opened', request, async (fact) => {
      const { code, title, underCounsel } = request;
      const readers = [...(await findPeople(fact.tx, request.readers, (i) => `/readers/${i}`))].sort();
      await fact.insert(CaseFileEntity, { code, title, underCounsel, readers });
      return { code };
    });
  }
}
