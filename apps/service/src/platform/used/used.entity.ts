import { Column, Entity } from 'typeorm';
import { FactRow } from '../facts/fact-row.js';

/** An amount of a lot put into a layer, a joint or a repair. */
@Entity({ schema: 'fact', name: 'used' })
export class UsedEntity extends FactRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  /** Set when a tank was named: the lot is what was in it then. */
  @Column('uuid', { name: 'tank_id', nullable: true })
  tankId!: string | null;

  @Column('text', { name: 'into_kind' })
  intoKind!: 'layer' | 'joint' | 'repair';

  @Column('uuid', { name: 'into_id' })
  intoId!: string;

  /** As entered, digit by digit. */
  @Column('numeric')
  quantity!: string;

  @Column('text')
  unit!: string;

  @Column('text')
  basis!: string;

  @Column('double precision')
  kg!: number;
}
