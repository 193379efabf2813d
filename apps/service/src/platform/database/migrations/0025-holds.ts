import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Holds on more than lots, with the hulls they reach and what is said of each. */
export class Holds0025 implements MigrationInterface {
  readonly name = 'Holds0025000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(HOLDS);
    await runner.query(HULLS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

/** On none of them, it is on a period: its first scope says which. */
const HOLDS = `
  alter table fact.hold alter column lot_id drop not null,
    add column equipment_id uuid references fact.equipment,
    add column mold_id uuid references fact.mold,
    add column mold_state integer check (mold_state > 0),
    add constraint hold_on_one_thing check (num_nonnulls(lot_id, equipment_id, mold_id) <= 1
      and (mold_id is null) = (mold_state is null) and (container_id is null or lot_id is not null));
  create index hold_not_on_lot on fact.hold (plant_id) where lot_id is null;
  alter table fact.hold_lift add column closed boolean not null default false;
  alter table fact.hold_lift alter column closed drop default;
  create table fact.hold_scope (${FACT_COLUMNS},
    hold_id uuid not null references fact.hold,
    turn integer not null check (turn > 0),
    min_share double precision not null check (min_share between 0 and 1),
    zone text,
    made_from timestamptz,
    made_until timestamptz,
    reason text,
    constraint hold_scope_once unique (hold_id, turn),
    constraint hold_narrowed_with_reason check (turn = 1 or reason is not null)
  );
`;

const HULLS = `
  create table fact.hold_reached (${FACT_COLUMNS},
    hold_id uuid not null references fact.hold,
    hull_id uuid references fact.hull,
    part_id uuid references fact.part,
    kg double precision,
    share double precision,
    possibly boolean not null,
    state text not null,
    constraint hold_reached_one check (num_nonnulls(hull_id, part_id) = 1)
  );
  create index hold_reached_hold on fact.hold_reached (hold_id);
  create table fact.hold_disposition (${FACT_COLUMNS},
    hold_id uuid not null references fact.hold,
    hull_id uuid references fact.hull,
    part_id uuid references fact.part,
    what text not null constraint hold_disposition_known check (what in ('found', 'checked', 'repaired', 'cleared', 'not reachable')),
    makers uuid[] not null,
    note text,
    evidence text,
    constraint hold_disposition_one check (num_nonnulls(hull_id, part_id) = 1)
  );
  create index hold_disposition_hold on fact.hold_disposition (hold_id, happened_at);
  create index hold_disposition_hull on fact.hold_disposition (hull_id) where hull_id is not null;
`;
