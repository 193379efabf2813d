import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** One layer of a published schedule, outside in. */
@Entity({ schema: 'fact', name: 'schedule_layer' })
export class ScheduleLayerEntity extends FactRow {
  @Column('uuid', { name: 'schedule_id' })
  scheduleId!: string;

  @Column('integer')
  position!: number;

  @Column('text')
  code!: string;

  @Column('text')
  name!: string;

  @Column('text')
  zone!: string;

  @Column('jsonb')
  plies!: readonly string[];

  @Column('double precision', { name: 'area_m2', nullable: true })
  areaM2!: number | null;

  @Column('jsonb', { nullable: true })
  laminate!: object | null;

  /** Part of the liquid used that may be missing from its film. */
  @Column('double precision', { name: 'loss_allowance', nullable: true })
  lossAllowance!: number | null;

  @Column('jsonb')
  materials!: readonly object[];

  @Column('jsonb')
  readings!: readonly object[];

  @Column('jsonb', { nullable: true })
  climate!: object | null;

  @Column('jsonb', { name: 'lay_up_window', nullable: true })
  layUpWindow!: object | null;

  @Column('text', { array: true })
  predecessors!: string[];

  @Column('text', { name: 'hold_point', nullable: true })
  holdPoint!: string | null;
}
