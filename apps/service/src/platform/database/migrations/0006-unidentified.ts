import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Material that nobody can name: a lot of its own, with the lots that it may be. */
export class Unidentified0006 implements MigrationInterface {
  readonly name = 'Unidentified0006000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(UNIDENTIFIED);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const UNIDENTIFIED = `
  alter table fact.lot
    drop constraint lot_origin_known,
    add constraint lot_origin_known check (origin in ('received', 'mixed', 'tank', 'cut', 'unidentified')),
    add column role text,
    add column looks text,
    add column found_at text,
    add constraint lot_unidentified_says_its_role check ((origin = 'unidentified') = (role is not null and looks is not null));
  create index lot_unidentified on fact.lot (role, happened_at) where origin = 'unidentified';
  create table fact.lot_candidate (${FACT_COLUMNS},
    lot_id uuid not null references fact.lot,
    candidate_id uuid not null references fact.lot,
    constraint lot_candidate_once unique (lot_id, candidate_id),
    constraint lot_candidate_not_itself check (lot_id <> candidate_id)
  );
  create index lot_candidate_candidate on fact.lot_candidate (candidate_id);
`;
