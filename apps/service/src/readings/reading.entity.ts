import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** One spot, with its verdict and the rule it was judged by, kept for ever. */
@Entity({ schema: 'fact', name: 'reading' })
export class ReadingEntity extends FactRow {
  @Column('text', { name: 'of_kind' })
  ofKind!: 'layer' | 'repair' | 'joint' | 'part' | 'lot';

  @Column('uuid', { name: 'of_id' })
  ofId!: string;

  @Column('text')
  what!: string;

  @Column('integer')
  spot!: number;

  /** As entered; of an interval, the end that was reached. */
  @Column('numeric')
  value!: string;

  /** End of an interval that was not reached. */
  @Column('numeric', { nullable: true })
  below!: string | null;

  @Column('text')
  unit!: string;

  @Column('double precision', { name: 'si_value' })
  siValue!: number;

  @Column('double precision', { name: 'si_below', nullable: true })
  siBelow!: number | null;

  @Column('jsonb', { nullable: true })
  place!: object | null;

  @Column('uuid', { name: 'equipment_id', nullable: true })
  equipmentId!: string | null;

  @Column('text')
  verdict!: string;

  @Column('boolean', { name: 'crosses_limit' })
  crossesLimit!: boolean;

  @Column('jsonb')
  rule!: object;
}
