import { Column } from 'typeorm';
import { FactRow } from './fact-row.js';

/** A fact about an amount of material. */
export abstract class AmountRow extends FactRow {
  /** As entered, digit by digit. */
  @Column('numeric')
  quantity!: string;

  @Column('text')
  unit!: string;

  @Column('text')
  basis!: string;

  @Column('double precision')
  kg!: number;
}
