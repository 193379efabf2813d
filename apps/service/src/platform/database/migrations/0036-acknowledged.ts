import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** What dealers acknowledged: letters of notices, and certificates that were withdrawn. */
export class Acknowledged0036 implements MigrationInterface {
  readonly name = 'Acknowledged0036000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(ACKNOWLEDGED);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const ACKNOWLEDGED = `
  create table fact.dealer_acknowledged (${FACT_COLUMNS},
    dealer_id uuid not null references fact.dealer,
    what text not null constraint dealer_acknowledged_known check (what in ('notice', 'certificate withdrawn')),
    about_id uuid not null,
    constraint dealer_acknowledged_once unique (dealer_id, about_id)
  );
`;
