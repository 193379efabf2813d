import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** Small cosmetic spots of a part that were touched up in one go. */
@Entity({ schema: 'fact', name: 'touch_up' })
export class TouchUpEntity extends FactRow {
  @Column('uuid', { name: 'part_id' })
  partId!: string;

  /** Its mark on its part is T and this. */
  @Column('integer')
  number!: number;

  @Column('uuid', { array: true })
  makers!: string[];

  /** Zone, kind, count and largest size of each group of spots. */
  @Column('jsonb')
  spots!: object;

  @Column('text', { nullable: true })
  note!: string | null;
}
