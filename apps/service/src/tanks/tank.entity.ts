import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A bulk tank. What it holds is a lot of its own after each fill. */
@Entity({ schema: 'fact', name: 'tank' })
export class TankEntity extends FactRow {
  @Column('text')
  code!: string;

  @Column('uuid', { name: 'material_id' })
  materialId!: string;

  @Column('double precision', { name: 'capacity_kg' })
  capacityKg!: number;
}
