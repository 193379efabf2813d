import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Guns with what is hooked up to them, checks of equipment, tanks emptied. */
export class Guns0007 implements MigrationInterface {
  readonly name = 'Guns0007000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(GUNS);
    await runner.query(CHECKS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const GUNS = `
  create table fact.hook_up (${FACT_COLUMNS},
    gun_id uuid not null references fact.equipment,
    feed text not null constraint hook_up_feed_known check (feed in ('resin', 'catalyst', 'glass')),
    lot_id uuid references fact.lot,
    tank_id uuid references fact.tank,
    constraint hook_up_of_one_thing check (num_nonnulls(lot_id, tank_id) <= 1)
  );
  create index hook_up_gun on fact.hook_up (gun_id, feed, happened_at);
  create table fact.gun_setting (${FACT_COLUMNS},
    gun_id uuid not null references fact.equipment,
    catalyst_percent double precision not null check (catalyst_percent >= 0 and catalyst_percent < 100)
  );
  create index gun_setting_gun on fact.gun_setting (gun_id, happened_at);
  alter table fact.used
    add column gun_id uuid references fact.equipment,
    add column feed text,
    add constraint used_gun_names_its_feed check ((gun_id is null) = (feed is null));
  create index used_gun on fact.used (gun_id, happened_at) where gun_id is not null;
  alter table fact.lot_input
    add column gun_id uuid references fact.equipment,
    add column feed text,
    add constraint lot_input_gun_names_its_feed check ((gun_id is null) = (feed is null));
  create index lot_input_gun on fact.lot_input (gun_id, happened_at) where gun_id is not null;
`;

const CHECKS = `
  create table fact.equipment_check (${FACT_COLUMNS},
    equipment_id uuid not null references fact.equipment,
    what text not null,
    value double precision,
    unit text,
    limits jsonb,
    good boolean not null,
    measured jsonb not null,
    certificate text,
    note text,
    constraint equipment_check_value_has_its_unit check ((value is null) = (unit is null))
  );
  create index equipment_check_equipment on fact.equipment_check (equipment_id, happened_at);
  create table fact.tank_emptied (${FACT_COLUMNS},
    tank_id uuid not null references fact.tank,
    cleaned boolean not null,
    note text
  );
  alter table fact.disposition
    drop constraint disposition_of_known,
    add constraint disposition_of_known check (of_kind in ('defect', 'reading', 'nonconformity', 'equipment check'));
  create index tank_emptied_tank on fact.tank_emptied (tank_id, happened_at);
`;
