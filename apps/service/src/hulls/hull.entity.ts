import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** One boat, from the first day of work. */
@Entity({ schema: 'fact', name: 'hull' })
export class HullEntity extends FactRow {
  @Column('uuid', { name: 'model_id' })
  modelId!: string;
}
