import { Column, Entity } from 'typeorm';
import { AmountRow } from '../platform/facts/amount-row.js';
import { FactRow } from '../platform/facts/fact-row.js';

/** Material that was lost to use: scrapped, purged, flushed from a line, spilled, kept as a sample, sent back. */
@Entity({ schema: 'fact', name: 'lot_loss' })
export class LotLossEntity extends AmountRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('uuid', { name: 'container_id', nullable: true })
  containerId!: string | null;

  @Column('text')
  what!: string;

  @Column('text')
  reason!: string;

  /** Where a sample is kept. */
  @Column('text', { nullable: true })
  place!: string | null;
}

/** What was really there when somebody counted; what differs from the book is worked out, not kept. */
@Entity({ schema: 'fact', name: 'lot_count' })
export class LotCountEntity extends FactRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('uuid', { name: 'container_id', nullable: true })
  containerId!: string | null;

  @Column('numeric')
  quantity!: string;

  @Column('text')
  unit!: string;

  @Column('double precision')
  kg!: number;

  @Column('text', { nullable: true })
  note!: string | null;
}

/** A retest that gave a lot another last day of use. */
@Entity({ schema: 'fact', name: 'lot_retest' })
export class LotRetestEntity extends FactRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('date', { name: 'expires_on' })
  expiresOn!: string;

  @Column('jsonb')
  certificate!: object;

  @Column('text')
  result!: string;
}
