import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** The rework or repair that a disposition asked for, done, and inspected by another person. */
@Entity({ schema: 'fact', name: 'rework' })
export class ReworkEntity extends FactRow {
  @Column('uuid', { name: 'disposition_id' })
  dispositionId!: string;

  @Column('uuid', { array: true })
  makers!: string[];

  @Column('uuid', { name: 'inspected_by' })
  inspectedBy!: string;

  @Column('text')
  note!: string;

  @Column('integer')
  turn!: number;
}
