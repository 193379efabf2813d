import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A repair looked at again after it was accepted, by one who did not do it. */
@Entity({ schema: 'fact', name: 're_inspection' })
export class ReInspectionEntity extends FactRow {
  @Column('uuid', { name: 'repair_id' })
  repairId!: string;

  @Column('uuid', { array: true })
  makers!: string[];

  @Column('uuid', { name: 'inspected_by' })
  inspectedBy!: string;

  @Column('boolean')
  passed!: boolean;

  @Column('text', { nullable: true })
  note!: string | null;
}
