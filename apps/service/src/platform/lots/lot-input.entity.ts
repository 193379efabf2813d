import { Column, Entity } from 'typeorm';
import { DrawnRow } from './drawn-row.js';

/** What went into a made lot. */
@Entity({ schema: 'fact', name: 'lot_input' })
export class LotInputEntity extends DrawnRow {
  @Column('uuid', { name: 'lot_id' })
  lotId!: string;

  @Column('uuid', { name: 'input_id' })
  inputId!: string;
}
