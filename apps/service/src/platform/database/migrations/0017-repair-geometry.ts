import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** The geometry of structural repairs, and the climate of areas of the shop. */
export class RepairGeometry0017 implements MigrationInterface {
  readonly name = 'RepairGeometry0017000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(GEOMETRY_AND_CLIMATE);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const GEOMETRY_AND_CLIMATE = `
  alter table fact.repair add geometry jsonb;
  alter table fact.layer_record add area text;
  create table fact.climate_point (${FACT_COLUMNS},
    area text not null,
    air_temperature_k double precision not null,
    relative_humidity double precision not null,
    entered jsonb not null
  );
  create index climate_point_area on fact.climate_point (plant_id, area, happened_at);
`;
