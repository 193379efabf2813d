import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A check of a gauge, gun, dispenser, scale or oven: good, or not. */
@Entity({ schema: 'fact', name: 'equipment_check' })
export class EquipmentCheckEntity extends FactRow {
  @Column('uuid', { name: 'equipment_id' })
  equipmentId!: string;

  @Column('text')
  what!: string;

  @Column('double precision', { nullable: true })
  value!: number | null;

  @Column('text', { nullable: true })
  unit!: string | null;

  @Column('jsonb', { nullable: true })
  limits!: object | null;

  @Column('boolean')
  good!: boolean;

  /** What was measured for it, as a timed catch: name and value. */
  @Column('jsonb')
  measured!: object;

  @Column('text', { nullable: true })
  certificate!: string | null;

  @Column('text', { nullable: true })
  note!: string | null;
}
