import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A shift lead's word that work goes on although rules stop it; quality disposes before release. */
@Entity({ schema: 'fact', name: 'go_on' })
export class GoOnEntity extends FactRow {
  @Column('uuid', { name: 'part_id', nullable: true })
  partId!: string | null;

  @Column('text', { nullable: true })
  layer!: string | null;

  /** Of a bucket or kit: the code it is made under. */
  @Column('text', { name: 'lot_code', nullable: true })
  lotCode!: string | null;

  @Column('text', { array: true })
  rules!: string[];

  @Column('text')
  reason!: string;

  @Column('uuid', { name: 'led_by' })
  ledBy!: string;
}
