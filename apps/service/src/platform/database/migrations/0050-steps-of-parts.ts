import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Parts of packed exposure as steps from one number to the next, of a byte each: a third of what a look reads. */
export class StepsOfParts0050 implements MigrationInterface {
  readonly name = 'StepsOfParts0050000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(PACK_ANEW);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Forward only; restore a backup instead.');
  }
}

/** What is packed otherwise is packed anew at the next look or at night, and read from places until then. */
const PACK_ANEW = `
  delete from derived.exposure;
  delete from derived.stale_exposure;
  insert into derived.stale_exposure (source_id) values (null);
`;
