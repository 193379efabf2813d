import { Column, Entity } from 'typeorm';
import { FactRow } from '../facts/fact-row.js';

/** A hold on a lot, one container of it, equipment or a state of a mold, from a time on; on none of them, on a period. */
@Entity({ schema: 'fact', name: 'hold' })
export class HoldEntity extends FactRow {
  @Column('uuid', { name: 'lot_id', nullable: true })
  lotId!: string | null;

  @Column('uuid', { name: 'container_id', nullable: true })
  containerId!: string | null;

  @Column('uuid', { name: 'equipment_id', nullable: true })
  equipmentId!: string | null;

  @Column('uuid', { name: 'mold_id', nullable: true })
  moldId!: string | null;

  @Column('integer', { name: 'mold_state', nullable: true })
  moldState!: number | null;

  @Column('text')
  kind!: 'quality' | 'safety';

  @Column('text')
  reason!: string;
}

/** What a hold may be on, all of it left out. */
export const ON_NOTHING = { lotId: null, containerId: null, equipmentId: null, moldId: null, moldState: null } as const;

/** The end of a hold: lifted, since the suspicion did not hold; or closed, with every hull disposed of. */
@Entity({ schema: 'fact', name: 'hold_lift' })
export class HoldLiftEntity extends FactRow {
  @Column('uuid', { name: 'hold_id' })
  holdId!: string;

  @Column('integer')
  turn!: number;

  @Column('text')
  reason!: string;

  @Column('boolean')
  closed!: boolean;
}
