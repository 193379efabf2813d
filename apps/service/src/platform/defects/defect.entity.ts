import { Column, Entity } from 'typeorm';
import { FactRow } from '../facts/fact-row.js';

/** A defect at its place. */
@Entity({ schema: 'fact', name: 'defect' })
export class DefectEntity extends FactRow {
  @Column('uuid', { name: 'part_id' })
  partId!: string;

  /** Its mark on its part is D and this. */
  @Column('integer')
  number!: number;

  @Column('uuid', { name: 'schedule_layer_id', nullable: true })
  scheduleLayerId!: string | null;

  @Column('text')
  kind!: string;

  @Column('jsonb')
  place!: object;

  @Column('double precision', { name: 'percent_of_length', nullable: true })
  percentOfLength!: number | null;

  @Column('text')
  zone!: string;

  @Column('double precision', { name: 'length_mm', nullable: true })
  lengthMm!: number | null;

  @Column('double precision', { name: 'width_mm', nullable: true })
  widthMm!: number | null;

  @Column('double precision', { name: 'depth_mm', nullable: true })
  depthMm!: number | null;

  @Column('text', { nullable: true })
  grade!: string | null;

  /** How many there are in the area counted. */
  @Column('integer', { nullable: true })
  counted!: number | null;

  @Column('double precision', { name: 'counted_area_m2', nullable: true })
  countedAreaM2!: number | null;

  @Column('text', { nullable: true })
  note!: string | null;

  /** The claim it was reported with. */
  @Column('uuid', { name: 'claim_id', nullable: true })
  claimId!: string | null;
}
