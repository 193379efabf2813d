import type { ChartSettings } from '@hull-record/contracts';
import type { ProcessFigures } from '@hull-record/statistics';
import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** Limits of a chart, frozen from the hulls of a period; they judge until others are frozen of the same chart. */
@Entity({ schema: 'fact', name: 'chart_limits' })
export class ChartLimitsEntity extends FactRow {
  @Column('text')
  what!: string;

  @Column('uuid', { name: 'model_id' })
  modelId!: string;

  @Column('text', { name: 'part_kind' })
  partKind!: string;

  /** Code of the layer; null: all layers of the part. */
  @Column('text', { nullable: true })
  layer!: string | null;

  @Column('uuid', { name: 'mold_id', nullable: true })
  moldId!: string | null;

  @Column('uuid', { name: 'gun_id', nullable: true })
  gunId!: string | null;

  @Column('text', { nullable: true })
  area!: string | null;

  @Column('date', { name: 'from_day' })
  fromDay!: string;

  @Column('date', { name: 'to_day' })
  toDay!: string;

  @Column('integer')
  hulls!: number;

  @Column('jsonb')
  settings!: ChartSettings;

  /** In SI; sigma and within as differences. */
  @Column('jsonb')
  figures!: ProcessFigures;

  @Column('text')
  reason!: string;
}
