import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A gauge, gun, dispenser, scale or oven. */
@Entity({ schema: 'fact', name: 'equipment' })
export class EquipmentEntity extends FactRow {
  @Column('text')
  code!: string;

  @Column('text')
  kind!: string;

  @Column('text')
  description!: string;
}
