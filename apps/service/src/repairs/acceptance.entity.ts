import { Column, Entity } from 'typeorm';
import { AcceptanceRow } from '../platform/facts/acceptance-row.js';

/** A repair accepted or refused by a person who did not do it. */
@Entity({ schema: 'fact', name: 'acceptance' })
export class AcceptanceEntity extends AcceptanceRow {
  /** The version of the repair that was judged. */
  @Column('uuid', { name: 'repair_id' })
  repairId!: string;
}
