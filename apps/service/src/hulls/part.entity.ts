import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** One molded piece, with a mold and a schedule version of its own. */
@Entity({ schema: 'fact', name: 'part' })
export class PartEntity extends FactRow {
  @Column('text')
  number!: string;

  @Column('text')
  kind!: string;

  @Column('uuid', { name: 'model_id' })
  modelId!: string;

  @Column('uuid', { name: 'schedule_id' })
  scheduleId!: string;

  @Column('uuid', { name: 'mold_id' })
  moldId!: string;
}
