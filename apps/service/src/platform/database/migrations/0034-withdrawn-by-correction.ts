import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Withdrawals of certificates say which entry of the journal they follow from, and which printed values changed. */
export class WithdrawnByCorrection0034 implements MigrationInterface {
  readonly name = 'WithdrawnByCorrection0034000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(COLUMNS);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const COLUMNS = `
  alter table fact.certificate_withdrawn
    add column because_of uuid references fact.journal,
    add column changed jsonb,
    add constraint certificate_withdrawn_names_changes check ((because_of is null) = (changed is null))`;
