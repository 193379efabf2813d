import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** From when on a lot is quarantined, released, held or rejected. */
@Entity({ schema: 'fact', name: 'lot_state' })
export class LotStateEntity extends FactRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('text')
  state!: string;

  @Column('text')
  reason!: string;
}
