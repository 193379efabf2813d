import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A mold: the female tool. */
@Entity({ schema: 'fact', name: 'mold' })
export class MoldEntity extends FactRow {
  @Column('text')
  code!: string;

  @Column('uuid', { name: 'model_id' })
  modelId!: string;

  @Column('text', { name: 'part_kind' })
  partKind!: string;
}
