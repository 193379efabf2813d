import type { MigrationInterface, QueryRunner } from 'typeorm';

/** The last day in each row of packed exposure: where nobody can have been too late, the days need not be read. */
export class LastDay0049 implements MigrationInterface {
  readonly name = 'LastDay0049000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(LAST_DAY);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Forward only; restore a backup instead.');
  }
}

/** What is packed is packed anew at the next look or at night, and read from places until then. */
const LAST_DAY = `
  delete from derived.exposure;
  delete from derived.stale_exposure;
  insert into derived.stale_exposure (source_id) values (null);
  alter table derived.exposure add last_day integer not null;
`;
