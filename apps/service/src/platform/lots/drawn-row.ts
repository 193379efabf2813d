import { Column } from 'typeorm';
import { AmountRow } from '../facts/amount-row.js';

/** From what a lot was drawn, when something that holds lots was named rather than the lot itself. */
export interface DrawnFrom {
  /** Set when a tank was named: the lot is what was in it then. */
  readonly tankId: string | null;
}

/** Nothing was named but the lot. */
export const FROM_THE_LOT: DrawnFrom = { tankId: null };

/** A fact that an amount was drawn: used, or put into another lot. */
export abstract class DrawnRow extends AmountRow implements DrawnFrom {
  @Column('uuid', { name: 'tank_id', nullable: true })
  tankId!: string | null;
}
