import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** One layer as really made on one part. */
@Entity({ schema: 'fact', name: 'layer_record' })
export class LayerRecordEntity extends FactRow {
  @Column('uuid', { name: 'part_id' })
  partId!: string;

  @Column('uuid', { name: 'schedule_layer_id' })
  scheduleLayerId!: string;

  @Column('integer')
  turn!: number;

  @Column('timestamptz', { name: 'started_at' })
  startedAt!: Date;

  @Column('timestamptz', { name: 'ended_at' })
  endedAt!: Date;

  /** Sorted, so that equal crews are equal. */
  @Column('uuid', { array: true })
  makers!: string[];

  @Column('jsonb', { name: 'climate_entered', nullable: true })
  climateEntered!: object | null;

  @Column('double precision', { name: 'air_temperature_k', nullable: true })
  airTemperatureK!: number | null;

  @Column('double precision', { name: 'mold_temperature_k', nullable: true })
  moldTemperatureK!: number | null;

  /** Fraction, 0 to 1. */
  @Column('double precision', { name: 'relative_humidity', nullable: true })
  relativeHumidity!: number | null;

  /** Area of the shop, whose climate log is joined by time. */
  @Column('text', { nullable: true })
  area!: string | null;

  /** How the layer before was prepared, when it had cured. */
  @Column('text', { name: 'surface_prepared', nullable: true })
  surfacePrepared!: string | null;

  @Column('text', { nullable: true })
  note!: string | null;
}
