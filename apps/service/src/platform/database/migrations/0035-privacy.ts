import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** What owners asked for, how their data were corrected or narrowed, and legal holds on the data of a hull. */
export class Privacy0035 implements MigrationInterface {
  readonly name = 'Privacy0035000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(PRIVACY);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

/** A changed value has a commitment of its own, under a salt of its own: the one before went with what it salted. */
const PRIVACY = `
  create table fact.owner_changed (${FACT_COLUMNS},
    owner_id uuid not null references fact.owner,
    what text not null constraint owner_changed_known check (what in ('corrected', 'narrowed')),
    commitment text not null,
    erased text[] not null,
    reason text not null
  );
  create index owner_changed_owner on fact.owner_changed (owner_id, recorded_at);
  create table fact.owner_request (${FACT_COLUMNS},
    owner_id uuid not null references fact.owner,
    asked text not null constraint owner_request_known check (asked in ('access', 'correction', 'erasure')),
    asked_on date not null
  );
  create index owner_request_owner on fact.owner_request (owner_id);
  create table fact.legal_hold (${FACT_COLUMNS},
    hull_id uuid not null references fact.hull,
    reason text not null constraint legal_hold_for check (length(trim(reason)) > 0)
  );
  create index legal_hold_hull on fact.legal_hold (hull_id);
  create table fact.legal_hold_ended (${FACT_COLUMNS},
    legal_hold_id uuid not null references fact.legal_hold constraint legal_hold_ends_once unique,
    reason text not null
  );
`;
