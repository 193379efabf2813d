import type { MigrationInterface, QueryRunner } from 'typeorm';

/** What is rebuilt from facts: composition of tank lots, and which source is where with how much. */
export class Derived0005 implements MigrationInterface {
  readonly name = 'Derived0005000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(DERIVED);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Forward only; restore a backup instead.');
  }
}

/**
 * No kg in the indexes of place_source: they are for finding places, and stay small. Statistics of source are raised
 * because the default sample misses half of the sources.
 */
const DERIVED = `
  create table derived.lot_composition (
    lot_id uuid not null,
    version integer not null,
    source_id uuid,
    role text not null,
    fraction double precision not null,
    basis text not null,
    constraint lot_composition_once unique nulls not distinct (lot_id, version, source_id, role)
  );
  create table derived.composed_lot (
    lot_id uuid primary key,
    version integer not null,
    entry_id uuid not null
  );
  create table derived.place_source (
    place_id uuid not null,
    part_id uuid not null,
    into_kind text not null,
    role text not null,
    source_id uuid,
    kg double precision not null,
    basis text not null,
    first_at timestamptz not null,
    last_at timestamptz not null,
    constraint place_source_once unique nulls not distinct (place_id, role, source_id)
  );
  create index place_source_source on derived.place_source (source_id, part_id);
  create index place_source_part on derived.place_source (part_id);
  alter table derived.place_source alter source_id set statistics 1000;
  create table derived.place_role (
    place_id uuid not null,
    part_id uuid not null,
    role text not null,
    kg double precision not null,
    constraint place_role_once primary key (place_id, role)
  );
  create index place_role_part on derived.place_role (part_id, role);
`;
