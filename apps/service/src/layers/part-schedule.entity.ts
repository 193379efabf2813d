import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A part follows another version of a schedule from a named layer on. */
@Entity({ schema: 'fact', name: 'part_schedule' })
export class PartScheduleEntity extends FactRow {
  @Column('uuid', { name: 'part_id' })
  partId!: string;

  @Column('uuid', { name: 'schedule_id' })
  scheduleId!: string;

  @Column('text', { name: 'from_layer' })
  fromLayer!: string;

  @Column('integer')
  turn!: number;

  @Column('text')
  reason!: string;
}
