import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** What may be touched up in this plant, from a time on; more than that is a repair. */
@Entity({ schema: 'fact', name: 'touch_up_limit' })
export class TouchUpLimitEntity extends FactRow {
  @Column('integer', { name: 'spots_in_a_zone' })
  spotsInAZone!: number;

  @Column('integer', { name: 'spots_on_a_part' })
  spotsOnAPart!: number;

  @Column('double precision', { name: 'largest_mm' })
  largestMm!: number;

  @Column('text')
  source!: string;
}
