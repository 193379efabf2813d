import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Certificates of hulls: their issues, the files that were signed, and withdrawals. */
export class Certificates0033 implements MigrationInterface {
  readonly name = 'Certificates0033000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(CERTIFICATES);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

/** The code that a paper is asked for by is a secret: facts have its digest alone. */
const CERTIFICATES = `
  create table fact.certificate (${FACT_COLUMNS},
    hull_id uuid not null references fact.hull,
    number text not null,
    issue integer not null,
    code_digest bytea not null,
    content text not null,
    constraint certificate_issue_once unique (plant_id, number, issue)
  );
  create index certificate_hull on fact.certificate (hull_id, issue);
  create index certificate_code on fact.certificate (code_digest);
  create table fact.certificate_file (${FACT_COLUMNS},
    certificate_id uuid not null references fact.certificate constraint certificate_file_once unique,
    sha256 text not null,
    bytes integer not null
  );
  create index certificate_file_digest on fact.certificate_file (sha256);
  create table fact.certificate_withdrawn (${FACT_COLUMNS},
    certificate_id uuid not null references fact.certificate constraint certificate_withdrawn_once unique,
    reason text not null constraint certificate_withdrawn_for check (length(trim(reason)) > 0)
  );
  create table work.certificate_code (
    certificate_id uuid primary key,
    code text not null
  );
`;
