import { Column, Entity } from 'typeorm';
import { FactRow } from '../facts/fact-row.js';

/** Kilograms that left or joined a lot other than by use; negative is a loss. */
@Entity({ schema: 'fact', name: 'lot_adjustment' })
export class LotAdjustmentEntity extends FactRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('text')
  kind!: string;

  @Column('double precision')
  kg!: number;

  @Column('text')
  basis!: string;

  @Column('text')
  reason!: string;
}
