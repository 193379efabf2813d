import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { OwnerDetail, RegisterOwner as Request } from '@hull-record/contracts';
import { canonicalJson, commitment } from '@hull-record/evidence';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { newSecret } from '../platform/ids.js';
import { ClientIdReused } from '../platform/refusals.js';
import { OwnerChangedEntity, OwnerDetailEntity, OwnerEntity } from './owner.entity.js';

/**
 * Registers an owner of a hull: whom a notice has to reach. The personal data lie apart, where they can be erased; the
 * record and the journal hold a salted commitment alone.
 */
@Injectable()
export class RegisterOwner {
  constructor(
    private readonly record: RecordFact,
    private readonly db: DataSource,
  ) {}

  async run(number: string, request: Request): Promise<Receipt<{ what: string }>> {
    const receipt = await this.record.run(
      'owner registered',
      { ...request, number },
      async (fact) => {
        const hullId = await findHull(fact.tx, number);
        const salt = newSecret();
        const { what, owner } = request;
        const ownerId = await fact.insert(OwnerEntity, {
          hullId,
          what,
          commitment: commitment(salt, canonicalJson(owner)),
        });
        await fact.tx.insert(OwnerDetailEntity, { ownerId, detail: owner, salt });
        return { what };
      },
      { journalled: ({ owner: _owner, ...rest }) => rest },
    );
    if (receipt.replayed) await this.assertSame(request.id.toLowerCase(), request.owner);
    return receipt;
  }

  /** The digest of a request leaves personal data out, so a retry is compared with what is kept, until it is changed. */
  private async assertSame(ownerId: string, owner: OwnerDetail): Promise<void> {
    const kept = await this.db.manager.findOneBy(OwnerDetailEntity, { ownerId });
    if (await this.db.manager.existsBy(OwnerChangedEntity, { ownerId })) return;
    if (kept && canonicalJson(kept.detail) !== canonicalJson(owner)) throw new ClientIdReused(ownerId);
  }
}
