import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A dealer acknowledged a letter of a notice, or that a certificate was withdrawn. */
@Entity({ schema: 'fact', name: 'dealer_acknowledged' })
export class DealerAcknowledgedEntity extends FactRow {
  @Column('uuid', { name: 'dealer_id' })
  dealerId!: string;

  @Column('text')
  what!: 'notice' | 'certificate withdrawn';

  /** The letter, or the withdrawal. */
  @Column('uuid', { name: 'about_id' })
  aboutId!: string;
}
