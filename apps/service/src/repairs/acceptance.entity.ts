import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A repair accepted or refused by a person who did not do it. */
@Entity({ schema: 'fact', name: 'acceptance' })
export class AcceptanceEntity extends FactRow {
  /** The version of the repair that was judged. */
  @Column('uuid', { name: 'repair_id' })
  repairId!: string;

  @Column('uuid', { array: true })
  makers!: string[];

  @Column('uuid', { name: 'accepted_by' })
  acceptedBy!: string;

  @Column('boolean')
  accepted!: boolean;

  @Column('text', { nullable: true })
  note!: string | null;

  @Column('integer')
  turn!: number;
}
