import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** An issue of a material's data sheet, from the day it came into force here. */
@Entity({ schema: 'fact', name: 'data_sheet' })
export class DataSheetEntity extends FactRow {
  @Column('uuid', { name: 'material_id' })
  materialId!: string;

  @Column('text')
  issue!: string;

  @Column('jsonb', { name: 'maker_data' })
  makerData!: object;
}
