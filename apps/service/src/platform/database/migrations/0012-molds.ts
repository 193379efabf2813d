import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** The care of molds, and the process a schedule is for. */
export class Molds0012 implements MigrationInterface {
  readonly name = 'Molds0012000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(MOLDS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

/** A schedule from before has no process: it was hand lay-up, and its digest must not change. */
const MOLDS = `
  create table fact.mold_care (${FACT_COLUMNS},
    mold_id uuid not null references fact.mold,
    what text not null constraint mold_care_known check (what in ('cleaned', 'sealed', 'waxed', 'release applied', 'sanded',
      'buffed', 'inspected', 'reworked')),
    makers uuid[] not null check (cardinality(makers) > 0),
    due_pulls integer check (due_pulls > 0),
    due_on date,
    note text
  );
  create index mold_care_mold on fact.mold_care (mold_id, happened_at);
  create index part_mold_started on fact.part (mold_id, happened_at);
  alter table fact.schedule add column process text
    constraint schedule_process_known check (process in ('hand lay-up', 'spray-up'));
`;
