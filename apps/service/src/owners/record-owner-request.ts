import { Injectable } from '@nestjs/common';
import type { RecordOwnerRequest as Request } from '@hull-record/contracts';
import { answerBy } from '@hull-record/trade';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findOwner } from './find-owner.js';
import { OwnerRequestEntity } from './owner.entity.js';

/** Records what an owner asked for about the own data, and says by when it is to be answered. */
@Injectable()
export class RecordOwnerRequest {
  constructor(private readonly record: RecordFact) {}

  run(owner: string, request: Request): Promise<Receipt<{ answerBy: string }>> {
    return this.record.run('owner asked', { ...request, owner }, async (fact) => {
      const { root } = await findOwner(fact.tx, owner);
      await fact.insert(OwnerRequestEntity, { ownerId: root, asked: request.asked, askedOn: request.askedOn });
      return { answerBy: answerBy(request.askedOn) };
    });
  }
}
