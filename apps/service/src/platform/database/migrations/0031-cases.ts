import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Cases: frozen settings, every look, and what each found; how far the job of a look is. */
export class Cases0031 implements MigrationInterface {
  readonly name = 'Cases0031000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(CASES);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const CASES = `
  create table fact.case_file (${FACT_COLUMNS},
    code text not null,
    title text not null,
    under_counsel boolean not null,
    readers uuid[] not null,
    constraint case_code_once unique (plant_id, code)
  );
  create table fact.case_settings (${FACT_COLUMNS},
    case_id uuid not null references fact.case_file,
    version integer not null,
    settings jsonb not null,
    sha256 text not null,
    reason text not null,
    constraint case_settings_once unique (case_id, version)
  );
  create table fact.case_look (${FACT_COLUMNS},
    case_id uuid not null references fact.case_file,
    settings_id uuid not null references fact.case_settings,
    number integer not null,
    constraint case_look_once unique (case_id, number)
  );
  create table fact.case_answer (${FACT_COLUMNS},
    look_id uuid not null constraint case_answer_once unique references fact.case_look,
    inputs_sha256 text not null,
    answer_sha256 text not null,
    verdict text not null,
    exploratory boolean not null,
    answer jsonb not null
  );
  create table work.case_run (
    look_id uuid primary key,
    plant_id uuid not null references fact.plant,
    state text not null constraint case_run_state check (state in ('waiting', 'running', 'done', 'failed')),
    step text,
    done integer not null,
    total integer not null,
    trouble text
  );
  create index case_run_open on work.case_run (plant_id) where state in ('waiting', 'running');
`;
