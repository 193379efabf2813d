import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Letters found by hull: whether a claim came after one is asked of every claim. */
export class LettersByHull0039 implements MigrationInterface {
  readonly name = 'LettersByHull0039000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query('create index notice_mailing_hull on fact.notice_mailing (hull_id)');
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}
