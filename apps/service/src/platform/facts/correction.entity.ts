import { Column, Entity } from 'typeorm';
import { FactRow } from './fact-row.js';

/** Says that a fact no longer stands, why, and which one stands in its place. A fact is corrected once at most. */
@Entity({ schema: 'fact', name: 'correction' })
export class CorrectionEntity extends FactRow {
  @Column('uuid')
  corrects!: string;

  @Column('text', { name: 'corrects_table' })
  correctsTable!: string;

  @Column('uuid', { nullable: true })
  replacement!: string | null;

  @Column('text')
  reason!: string;
}
