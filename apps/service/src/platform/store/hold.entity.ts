import { Column, Entity } from 'typeorm';
import { FactRow } from '../facts/fact-row.js';

/** A hold on a lot, or on one container of it, from a time on. */
@Entity({ schema: 'fact', name: 'hold' })
export class HoldEntity extends FactRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('uuid', { name: 'container_id', nullable: true })
  containerId!: string | null;

  @Column('text')
  kind!: 'quality' | 'safety';

  @Column('text')
  reason!: string;
}

/** The end of a hold. */
@Entity({ schema: 'fact', name: 'hold_lift' })
export class HoldLiftEntity extends FactRow {
  @Column('uuid', { name: 'hold_id' })
  holdId!: string;

  @Column('integer')
  turn!: number;

  @Column('text')
  reason!: string;
}
