import { Column, Entity } from 'typeorm';
import { FactRow } from '../platform/facts/fact-row.js';

/** One point of the climate log of an area of the shop; it happened when it was read. */
@Entity({ schema: 'fact', name: 'climate_point' })
export class ClimatePointEntity extends FactRow {
  @Column('text')
  area!: string;

  @Column('double precision', { name: 'air_temperature_k' })
  airTemperatureK!: number;

  /** Fraction, 0 to 1. */
  @Column('double precision', { name: 'relative_humidity' })
  relativeHumidity!: number;

  @Column('jsonb')
  entered!: object;
}
