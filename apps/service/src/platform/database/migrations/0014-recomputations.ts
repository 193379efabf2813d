import type { MigrationInterface, QueryRunner } from 'typeorm';

/** What is worked out anew after a correction that reached much. */
export class Recomputations0014 implements MigrationInterface {
  readonly name = 'Recomputations0014000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(RECOMPUTATIONS);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Forward only; restore a backup instead.');
  }
}

/** No foreign key to the journal: its entry is written after this, at the end of the same transaction. */
const RECOMPUTATIONS = `
  create table work.recomputation (
    id uuid primary key,
    plant_id uuid not null references fact.plant,
    asked_at timestamptz not null,
    finished_at timestamptz,
    tank_lots integer not null,
    places integer not null,
    nonconformities integer,
    trouble text
  );
  create index recomputation_unfinished on work.recomputation (plant_id) where finished_at is null;
  create table work.stale_lot (
    recomputation_id uuid not null references work.recomputation on delete cascade,
    lot_id uuid not null,
    tank boolean not null,
    done boolean not null,
    constraint stale_lot_once primary key (lot_id, recomputation_id)
  );
  create index stale_lot_of on work.stale_lot (recomputation_id);
  create table work.stale_place (
    recomputation_id uuid not null references work.recomputation on delete cascade,
    place_id uuid not null,
    part_id uuid not null,
    done boolean not null,
    constraint stale_place_once primary key (place_id, part_id, recomputation_id)
  );
  create index stale_place_of on work.stale_place (recomputation_id);
  create index stale_place_part on work.stale_place (part_id);
`;
