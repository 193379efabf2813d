import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A repair as it was done. */
@Entity({ schema: 'fact', name: 'repair' })
export class RepairEntity extends FactRow {
  @Column('uuid', { name: 'part_id' })
  partId!: string;

  /** Its mark on its part is R and this. */
  @Column('integer')
  number!: number;

  @Column('uuid', { array: true })
  makers!: string[];

  @Column('text')
  procedure!: string;

  @Column('double precision', { name: 'taper_ratio', nullable: true })
  taperRatio!: number | null;

  @Column('jsonb', { name: 'grind_out_mm', nullable: true })
  grindOutMm!: object | null;

  /** Laminate, damage, taper and patch, mm, of a structural repair. */
  @Column('jsonb', { nullable: true })
  geometry!: object | null;

  @Column('jsonb')
  plies!: readonly string[];

  /** What is known of it when it was done elsewhere. */
  @Column('jsonb', { nullable: true })
  outside!: object | null;

  /** The dealer who reported it, of a repair that was done elsewhere. */
  @Column('uuid', { name: 'dealer_id', nullable: true })
  dealerId!: string | null;

  @Column('text', { nullable: true })
  note!: string | null;
}
