import type { MigrationInterface, QueryRunner } from 'typeorm';

/** On which market a boat was placed. */
export class Markets0019 implements MigrationInterface {
  readonly name = 'Markets0019000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query('alter table fact.life_fact add market text');
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}
