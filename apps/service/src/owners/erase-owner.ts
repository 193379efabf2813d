import { Injectable } from '@nestjs/common';
import type { EraseOwner as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { OwnerDetailEntity, OwnerErasedEntity } from './owner.entity.js';

/** Erases an owner's personal data, with their salt. That there was an owner stays; nobody can say any more who. */
@Injectable()
export class EraseOwner {
  constructor(private readonly record: RecordFact) {}

  run(owner: string, request: Request): Promise<Receipt<{ erased: true }>> {
    return this.record.run('owner erased', { ...request, owner }, async (fact) => {
      const found = await findStanding(fact.tx, 'owner', owner);
      await fact.insert(OwnerErasedEntity, { ownerId: found.root, reason: request.reason });
      await fact.tx.delete(OwnerDetailEntity, { ownerId: found.root });
      return { erased: true as const };
    });
  }
}
