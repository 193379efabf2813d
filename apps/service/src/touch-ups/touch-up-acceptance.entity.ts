import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** Touch-ups accepted or refused, all of one entry at once, by one who did not do them. */
@Entity({ schema: 'fact', name: 'touch_up_acceptance' })
export class TouchUpAcceptanceEntity extends FactRow {
  @Column('uuid', { name: 'touch_up_id' })
  touchUpId!: string;

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
