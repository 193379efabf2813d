import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** What was done to a mold, and when the like is due again. A rework begins a new state of the mold. */
@Entity({ schema: 'fact', name: 'mold_care' })
export class MoldCareEntity extends FactRow {
  @Column('uuid', { name: 'mold_id' })
  moldId!: string;

  @Column('text')
  what!: string;

  @Column('uuid', { array: true })
  makers!: string[];

  @Column('integer', { name: 'due_pulls', nullable: true })
  duePulls!: number | null;

  @Column('date', { name: 'due_on', nullable: true })
  dueOn!: string | null;

  @Column('text', { nullable: true })
  note!: string | null;
}
