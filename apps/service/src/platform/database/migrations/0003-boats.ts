import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Models, schedules, molds, hulls with their numbers, parts, and the life of a boat. */
export class Boats0003 implements MigrationInterface {
  readonly name = 'Boats0003000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(MODEL);
    await runner.query(HULL);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const MODEL = `
  create table fact.model (${FACT_COLUMNS},
    code text not null,
    name text not null,
    skins jsonb not null,
    required_parts text[] not null,
    constraint model_code_once unique (plant_id, code)
  );
  create table fact.schedule (${FACT_COLUMNS},
    model_id uuid not null references fact.model,
    part_kind text not null,
    version integer not null check (version > 0),
    constraint schedule_version_once unique (model_id, part_kind, version)
  );
  create table fact.schedule_layer (${FACT_COLUMNS},
    schedule_id uuid not null references fact.schedule,
    position integer not null check (position > 0),
    code text not null,
    name text not null,
    zone text not null,
    plies jsonb not null,
    materials jsonb not null,
    readings jsonb not null,
    climate jsonb,
    lay_up_window jsonb,
    predecessors text[] not null,
    hold_point text,
    constraint schedule_layer_code_once unique (schedule_id, code),
    constraint schedule_layer_position_once unique (schedule_id, position)
  );
  create table fact.mold (${FACT_COLUMNS},
    code text not null,
    model_id uuid not null references fact.model,
    part_kind text not null,
    constraint mold_code_once unique (plant_id, code)
  );
`;

const HULL = `
  create table fact.hull (${FACT_COLUMNS},
    model_id uuid not null references fact.model
  );
  create index hull_happened on fact.hull (happened_at, id);
  create table fact.hull_number (${FACT_COLUMNS},
    hull_id uuid not null references fact.hull,
    kind text not null constraint hull_number_kind_known check (kind in ('hull number', 'HIN')),
    normalised text not null constraint hull_number_once unique,
    as_printed text not null,
    reason text
  );
  create index hull_number_hull on fact.hull_number (hull_id);
  create table fact.part (${FACT_COLUMNS},
    number text not null,
    kind text not null,
    model_id uuid not null references fact.model,
    schedule_id uuid not null references fact.schedule,
    mold_id uuid not null references fact.mold,
    constraint part_number_once unique (plant_id, number)
  );
  create index part_mold on fact.part (mold_id);
  create table fact.joint (${FACT_COLUMNS},
    hull_id uuid not null references fact.hull,
    part_id uuid not null references fact.part,
    turn integer not null check (turn > 0),
    makers uuid[] not null check (cardinality(makers) > 0),
    constraint joint_part_once unique (part_id, turn)
  );
  create index joint_hull on fact.joint (hull_id);
  create table fact.life_fact (${FACT_COLUMNS},
    hull_id uuid not null references fact.hull,
    what text not null constraint life_fact_known check (what in ('part started', 'demolded', 'HIN affixed', 'released',
      'left the place of manufacture', 'at dealer', 'sold to first purchaser', 'warranty registered', 'transferred',
      'returned', 'scrapped', 'exported')),
    dealer_id uuid references fact.dealer,
    note text,
    constraint life_fact_dealer_named check (what <> 'at dealer' or dealer_id is not null)
  );
  create index life_fact_hull on fact.life_fact (hull_id, happened_at);
`;
