import { Column, Entity } from 'typeorm';
import { AcceptanceRow } from '../platform/facts/acceptance-row.js';

/** Touch-ups accepted or refused, all of one entry at once, by one who did not do them. */
@Entity({ schema: 'fact', name: 'touch_up_acceptance' })
export class TouchUpAcceptanceEntity extends AcceptanceRow {
  @Column('uuid', { name: 'touch_up_id' })
  touchUpId!: string;
}
