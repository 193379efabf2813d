import { Column, Entity } from 'typeorm';
import type { MarginRule } from '@hull-record/trade';
import { FactRow } from '../platform/facts/fact-row.js';

/** By which published rules a plant judges, from a time on. */
@Entity({ schema: 'fact', name: 'plant_rules' })
export class PlantRulesEntity extends FactRow {
  @Column('text', { name: 'margin_rule' })
  marginRule!: MarginRule;

  /** null: the limits of each schedule alone. */
  @Column('text', { name: 'shop_window', nullable: true })
  shopWindow!: string | null;

  /** Part of the resin maker's minimum hardness that is enough. */
  @Column('double precision', { name: 'barcol_fraction' })
  barcolFraction!: number;

  @Column('text')
  reason!: string;
}
