import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A published version of a laminate schedule. */
@Entity({ schema: 'fact', name: 'schedule' })
export class ScheduleEntity extends FactRow {
  @Column('uuid', { name: 'model_id' })
  modelId!: string;

  @Column('text', { name: 'part_kind' })
  partKind!: string;

  @Column('integer')
  version!: number;
}
