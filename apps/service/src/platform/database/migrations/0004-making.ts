import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';
import { AMOUNT_COLUMNS } from './0002-materials.js';

/** Layers as made, what was used, readings, signatures, defects, repairs, dispositions. */
export class Making0004 implements MigrationInterface {
  readonly name = 'Making0004000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(LAYER);
    await runner.query(DEFECT);
    await runner.query(JUDGEMENT);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

/** Where the maker differs from the signer, the database itself sees to it: the makers travel with the key. */
const LAYER = `
  create table fact.layer_record (${FACT_COLUMNS},
    part_id uuid not null references fact.part,
    schedule_layer_id uuid not null references fact.schedule_layer,
    turn integer not null check (turn > 0),
    started_at timestamptz not null,
    ended_at timestamptz not null,
    makers uuid[] not null check (cardinality(makers) > 0),
    climate_entered jsonb,
    air_temperature_k double precision,
    mold_temperature_k double precision,
    relative_humidity double precision check (relative_humidity between 0 and 1),
    note text,
    constraint layer_record_ends_after_start check (ended_at >= started_at),
    constraint layer_record_makers unique (id, makers)
  );
  create unique index layer_record_once on fact.layer_record (part_id, schedule_layer_id, turn) where root = id;
  create index layer_record_root on fact.layer_record (root);
  create index layer_record_part on fact.layer_record (part_id);
  create table fact.used (${FACT_COLUMNS},
    lot_id uuid not null references fact.lot,
    tank_id uuid references fact.tank,
    into_kind text not null constraint used_into_known check (into_kind in ('layer', 'joint', 'repair')),
    into_id uuid not null,
    ${AMOUNT_COLUMNS}
  );
  create index used_lot on fact.used (lot_id) include (into_id, kg);
  create index used_into on fact.used (into_id);
  create index used_tank on fact.used (tank_id, happened_at) where tank_id is not null;
  create table fact.reading (${FACT_COLUMNS},
    of_kind text not null constraint reading_of_known check (of_kind in ('layer', 'repair')),
    of_id uuid not null,
    what text not null,
    spot integer not null check (spot > 0),
    value numeric not null,
    below numeric,
    unit text not null,
    si_value double precision not null,
    si_below double precision,
    place jsonb,
    equipment_id uuid references fact.equipment,
    verdict text not null constraint reading_verdict_known check (verdict in ('inside', 'outside', 'cannot be judged', 'no limit')),
    crosses_limit boolean not null,
    rule jsonb not null,
    constraint reading_interval_open check (below is null or below > value)
  );
  create index reading_of on fact.reading (of_id);
  create index reading_equipment on fact.reading (equipment_id, happened_at) where equipment_id is not null;
  create table fact.signature (${FACT_COLUMNS},
    layer_record_id uuid not null,
    makers uuid[] not null,
    signed_by uuid not null references fact.person,
    constraint signature_of_the_record_as_made foreign key (layer_record_id, makers) references fact.layer_record (id, makers),
    constraint signature_by_another_person check (signed_by <> all (makers)),
    turn integer not null check (turn > 0),
    constraint signature_once unique (layer_record_id, turn)
  );
`;

const DEFECT = `
  create table fact.defect (${FACT_COLUMNS},
    part_id uuid not null references fact.part,
    number integer not null check (number > 0),
    schedule_layer_id uuid references fact.schedule_layer,
    kind text not null,
    place jsonb not null,
    percent_of_length double precision,
    zone text not null,
    length_mm double precision check (length_mm > 0),
    width_mm double precision check (width_mm > 0),
    depth_mm double precision check (depth_mm > 0),
    grade text,
    note text
  );
  create unique index defect_number_once on fact.defect (part_id, number) where root = id;
  create index defect_root on fact.defect (root);
  create table fact.photo (${FACT_COLUMNS},
    defect_id uuid not null references fact.defect,
    original_sha256 text not null,
    original_type text not null,
    original_bytes integer not null,
    shown_sha256 text not null,
    width integer not null,
    height integer not null
  );
  create index photo_defect on fact.photo (defect_id);
  create table fact.repair (${FACT_COLUMNS},
    part_id uuid not null references fact.part,
    number integer not null check (number > 0),
    makers uuid[] not null check (cardinality(makers) > 0),
    procedure text not null,
    taper_ratio double precision check (taper_ratio > 0),
    grind_out_mm jsonb,
    plies jsonb not null,
    constraint repair_makers unique (id, makers)
  );
  create unique index repair_number_once on fact.repair (part_id, number) where root = id;
  create index repair_root on fact.repair (root);
  create table fact.repair_defect (${FACT_COLUMNS},
    repair_id uuid not null references fact.repair,
    defect_id uuid not null references fact.defect,
    constraint repair_defect_once unique (repair_id, defect_id)
  );
  create index repair_defect_defect on fact.repair_defect (defect_id);
  create table fact.acceptance (${FACT_COLUMNS},
    repair_id uuid not null,
    makers uuid[] not null,
    accepted_by uuid not null references fact.person,
    accepted boolean not null,
    note text,
    constraint acceptance_of_the_repair_as_made foreign key (repair_id, makers) references fact.repair (id, makers),
    constraint acceptance_by_another_person check (accepted_by <> all (makers)),
    turn integer not null check (turn > 0),
    constraint acceptance_once unique (repair_id, turn)
  );
`;

const JUDGEMENT = `
  create table fact.nonconformity (${FACT_COLUMNS},
    part_id uuid references fact.part,
    about_kind text not null,
    about_id uuid not null,
    rule text not null,
    detail text not null
  );
  create index nonconformity_part on fact.nonconformity (part_id);
  create index nonconformity_about on fact.nonconformity (about_id);
  create table fact.disposition (${FACT_COLUMNS},
    of_kind text not null constraint disposition_of_known check (of_kind in ('defect', 'reading', 'nonconformity')),
    of_id uuid not null,
    turn integer not null check (turn > 0),
    constraint disposition_once unique (of_id, turn),
    disposition text not null constraint disposition_known check (disposition in ('use as is', 'rework', 'repair', 'scrap')),
    concession text,
    reason text not null,
    constraint disposition_concession_named check (disposition <> 'use as is' or concession is not null)
  );
  create unique index disposition_concession_once on fact.disposition (plant_id, concession) where root = id;
`;
