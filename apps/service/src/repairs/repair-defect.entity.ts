import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** Which defects a repair puts right. */
@Entity({ schema: 'fact', name: 'repair_defect' })
export class RepairDefectEntity extends FactRow {
  @Column('uuid', { name: 'repair_id' })
  repairId!: string;

  @Column('uuid', { name: 'defect_id' })
  defectId!: string;
}
