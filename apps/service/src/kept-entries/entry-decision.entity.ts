import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** What quality decided about an entry that a revoked device sent. */
@Entity({ schema: 'fact', name: 'entry_decision' })
export class EntryDecisionEntity extends FactRow {
  @Column('uuid', { name: 'kept_entry_id' })
  keptEntryId!: string;

  @Column('boolean')
  admitted!: boolean;

  @Column('text')
  reason!: string;

  /** What the service answered to the entry when it was admitted. */
  @Column('jsonb', { nullable: true })
  answer!: unknown;
}
