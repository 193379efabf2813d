import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A tank was emptied, and cleaned or not: nothing of its lot is in the next fill. */
@Entity({ schema: 'fact', name: 'tank_emptied' })
export class TankEmptiedEntity extends FactRow {
  @Column('uuid', { name: 'tank_id' })
  tankId!: string;

  @Column('boolean')
  cleaned!: boolean;

  @Column('text', { nullable: true })
  note!: string | null;
}
