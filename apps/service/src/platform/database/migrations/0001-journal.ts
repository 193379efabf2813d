import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Schemas, and the one path that records a fact: client ids, journal, corrections; plants, people, devices. */
export class Journal0001 implements MigrationInterface {
  readonly name = 'Journal0001000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(SCHEMAS);
    await runner.query(JOURNAL);
    await runner.query(PEOPLE);
    await runner.query(CORRECTION);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const SCHEMAS = `
  create schema fact;     -- appended, never edited: the service has SELECT and INSERT here
  create schema derived;  -- what can be rebuilt from facts
  create schema work;     -- sessions, personal data, jobs, locks
`;

/** Columns that every fact has. References to the journal are checked at commit, since rows come before their entry. */
export const FACT_COLUMNS = `
  id uuid primary key,
  root uuid not null,
  plant_id uuid not null references fact.plant deferrable initially deferred,
  entry_id uuid not null references fact.journal deferrable initially deferred,
  happened_at timestamptz not null,
  recorded_at timestamptz not null`;

const JOURNAL = `
  create table fact.client_id (
    id uuid primary key,
    digest bytea not null
  );
  create table fact.plant (
    id uuid primary key,
    code text not null constraint plant_code_once unique,
    time_zone text not null
  );
  create table fact.journal (
    id uuid primary key references fact.client_id,
    position bigint generated always as identity constraint journal_position_once unique,
    plant_id uuid not null references fact.plant,
    transaction xid8 not null default pg_current_xact_id(),
    format smallint not null,
    kind text not null,
    person_id uuid not null,
    device_id uuid not null,
    identity text not null constraint journal_identity_known check (identity in ('stated', 'proved')),
    happened_at timestamptz not null,
    recorded_at timestamptz not null,
    covers text[] not null,
    entry text not null
  );
  create index journal_recorded on fact.journal (plant_id, recorded_at);
  create index journal_covers on fact.journal using gin (covers);
`;

const PEOPLE = `
  create table fact.person (${FACT_COLUMNS},
    badge text not null constraint person_badge_once unique,
    name_commitment text not null
  );
  create table fact.person_role (${FACT_COLUMNS},
    person_id uuid not null references fact.person,
    role text not null,
    constraint person_role_known check (role in ('receiving', 'laminator', 'shift lead', 'inspector', 'patcher',
      'quality', 'warranty', 'dealer', 'auditor', 'administrator'))
  );
  create index person_role_person on fact.person_role (person_id);
  create table fact.device (${FACT_COLUMNS},
    code text not null constraint device_code_once unique,
    description text not null,
    rated_for_classified_area boolean not null
  );
  create table work.person_detail (
    person_id uuid primary key,
    name text not null,
    salt text not null
  );
  alter table fact.journal
    add constraint journal_person foreign key (person_id) references fact.person deferrable initially deferred,
    add constraint journal_device foreign key (device_id) references fact.device deferrable initially deferred;
`;

const CORRECTION = `
  create table fact.correction (${FACT_COLUMNS},
    corrects uuid not null constraint correction_once unique,
    corrects_table text not null,
    replacement uuid,
    reason text not null constraint correction_reason_given check (length(trim(reason)) > 0)
  );
`;
