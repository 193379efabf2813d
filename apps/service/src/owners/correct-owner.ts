import { Injectable } from '@nestjs/common';
import { canonicalJson } from '@hull-record/evidence';
import { DataSource } from 'typeorm';
import type { CorrectOwner as Request, OwnerDetail } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { ClientIdReused } from '../platform/refusals.js';
import { findOwner } from './find-owner.js';
import { OwnerChangedEntity, OwnerDetailEntity } from './owner.entity.js';
import { writeDetail } from './write-detail.js';

const FIELDS = ['address', 'email', 'phone'] as const;

/** Sets personal data right: what was there before is erased with its salt. The journal has neither. */
@Injectable()
export class CorrectOwner {
  constructor(
    private readonly record: RecordFact,
    private readonly db: DataSource,
  ) {}

  async run(owner: string, request: Request): Promise<Receipt<{ corrected: true }>> {
    const receipt = await this.record.run(
      'owner corrected',
      { ...request, ofOwner: owner },
      async (fact) => {
        const { root } = await findOwner(fact.tx, owner);
        const erased = FIELDS.filter((field) => request.owner[field] === undefined);
        const { reason } = request;
        await writeDetail(fact, { ownerId: root, what: 'corrected', owner: request.owner, erased, reason });
        return { corrected: true as const };
      },
      { journalled: ({ owner: _owner, ...rest }) => rest },
    );
    if (receipt.replayed) await this.assertSame(request.id.toLowerCase(), request.owner);
    return receipt;
  }

  /** A retry is compared with what is kept, as long as this was the last change of it. */
  private async assertSame(id: string, owner: OwnerDetail): Promise<void> {
    const change = await this.db.manager.findOneBy(OwnerChangedEntity, { id });
    if (!change) return;
    const { ownerId } = change;
    const last = await this.db.manager.findOne(OwnerChangedEntity, {
      where: { ownerId },
      order: { recordedAt: 'DESC' },
    });
    const kept = await this.db.manager.findOneBy(OwnerDetailEntity, { ownerId });
    if (last?.id === id && kept && canonicalJson(kept.detail) !== canonicalJson(owner)) throw new ClientIdReused(id);
  }
}
