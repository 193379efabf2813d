import { Injectable } from '@nestjs/common';
import type { EraseOwner as Request, OwnerDetail } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { Conflict } from '../platform/refusals.js';
import { findOwner } from './find-owner.js';
import { keepsData, type KeepsData } from '../platform/life/keeps-data.js';
import { narrow } from './narrow.js';
import { OwnerDetailEntity, OwnerErasedEntity } from './owner.entity.js';
import { writeDetail } from './write-detail.js';

export interface Erased {
  readonly erased: boolean;
  readonly narrowed: readonly string[];
  readonly keptUntil: string | null;
  readonly keptBecause: string | null;
}

/**
 * Erases an owner's personal data, with their salt. That there was an owner stays; nobody can say any more who. While a
 * legal hold or the day until which the record is kept stands against it, they are narrowed to what a notice needs.
 */
@Injectable()
export class EraseOwner {
  constructor(private readonly record: RecordFact) {}

  run(owner: string, request: Request): Promise<Receipt<Erased>> {
    return this.record.run('owner erased', { ...request, owner }, async (fact) => {
      const found = await findOwner(fact.tx, owner);
      const keeps = await keepsData(fact.tx, found.hullId, fact.recordedAt.toISOString().slice(0, 10));
      if (keeps.because !== null) return narrowInstead(fact, found.root, request.reason, keeps);
      await fact.insert(OwnerErasedEntity, { ownerId: found.root, reason: request.reason });
      await fact.tx.delete(OwnerDetailEntity, { ownerId: found.root });
      return { erased: true, narrowed: [], keptUntil: null, keptBecause: null };
    });
  }
}

const narrowInstead = async (fact: Fact, ownerId: string, reason: string, keeps: KeepsData): Promise<Erased> => {
  const kept = await fact.tx.findOneBy(OwnerDetailEntity, { ownerId });
  if (!kept) throw new Conflict('erased-already', 'What was kept of this owner is erased already.');
  const { left, erased } = narrow(kept.detail as OwnerDetail);
  await writeDetail(fact, { ownerId, what: 'narrowed', owner: left, erased, reason });
  return { erased: false, narrowed: erased, keptUntil: keeps.until, keptBecause: keeps.because };
};
