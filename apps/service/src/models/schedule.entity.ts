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

  /** Open-mold hand lay-up, or spray-up with a chopper gun; null: from before it was asked, hand lay-up. */
  @Column('text', { nullable: true })
  process!: 'hand lay-up' | 'spray-up' | null;
}
