import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Readings of whole parts, as their weight, and of lots, as gel time and viscosity. */
export class ReadingsOfWholes0018 implements MigrationInterface {
  readonly name = 'ReadingsOfWholes0018000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      alter table fact.reading
        drop constraint reading_of_known,
        add constraint reading_of_known check (of_kind in ('layer', 'repair', 'joint', 'part', 'lot'))`);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}
