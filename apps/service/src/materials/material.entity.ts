import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** A material with its maker's data. */
@Entity({ schema: 'fact', name: 'material' })
export class MaterialEntity extends FactRow {
  @Column('text')
  code!: string;

  @Column('text')
  name!: string;

  @Column('text')
  role!: string;

  @Column('text', { nullable: true })
  maker!: string | null;

  @Column('integer', { name: 'shelf_life_days', nullable: true })
  shelfLifeDays!: number | null;

  @Column('double precision', { name: 'density_kg_per_l', nullable: true })
  densityKgPerL!: number | null;

  @Column('double precision', { name: 'areal_mass_kg_per_m2', nullable: true })
  arealMassKgPerM2!: number | null;

  @Column('double precision', { name: 'piece_mass_kg', nullable: true })
  pieceMassKg!: number | null;

  @Column('double precision', { name: 'loss_allowance', nullable: true })
  lossAllowance!: number | null;

  @Column('jsonb', { name: 'maker_data' })
  makerData!: object;
}
