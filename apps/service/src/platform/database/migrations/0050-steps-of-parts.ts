import type { MigrationInterface, QueryRunner } from 'typeorm';

/** What is packed of exposure as steps of a byte each, and of hulls without what none of them has: a look reads a third of it. */
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

/** What is packed otherwise is packed anew at the next look or at night, and read from facts until then. */
const PACK_ANEW = `
  delete from derived.hull_block;
  delete from derived.stale_hull;
  insert into derived.stale_hull (hull_id) values (null);
  delete from derived.exposure;
  delete from derived.stale_exposure;
  insert into derived.stale_exposure (source_id) values (null);
`;
