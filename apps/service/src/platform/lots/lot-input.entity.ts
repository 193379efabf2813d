import { Column, Entity } from 'typeorm';
import { FactRow } from '../facts/fact-row.js';

/** What went into a made lot. */
@Entity({ schema: 'fact', name: 'lot_input' })
export class LotInputEntity extends FactRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('uuid', { name: 'input_id' })
  inputId!: string;

  /** Set when a tank was named: the input is what was in it then. */
  @Column('uuid', { name: 'tank_id', nullable: true })
  tankId!: string | null;

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
