import type { MigrationInterface, QueryRunner } from 'typeorm';

/** The journal sealed: where each entry stands in the tree, the tree's complete subtrees, and its signed heads. */
export class SealedJournal0026 implements MigrationInterface {
  readonly name = 'SealedJournal0026000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(SEALED);
    await runner.query(WORK);
  }

  /** Forward only: undoing this would delete what was sealed. */
  down(): Promise<void> {
    throw new Error('What was sealed is never deleted; restore a backup instead.');
  }
}

/** `entered` repeats the entry's order of insertion, so that a change of it shows. */
const SEALED = `
  create table fact.sealed_entry (
    entry_id uuid primary key references fact.journal,
    plant_id uuid not null references fact.plant,
    index bigint not null,
    entered bigint not null,
    constraint sealed_entry_index_once unique (plant_id, index)
  );
  create table fact.sealed_subtree (
    plant_id uuid not null references fact.plant,
    level integer not null,
    index bigint not null,
    hash bytea not null,
    primary key (plant_id, level, index),
    constraint sealed_subtree_hash_whole check (length(hash) = 32)
  );
  create table fact.tree_head (
    plant_id uuid not null references fact.plant,
    number integer not null,
    size bigint not null,
    signed_at timestamptz not null,
    line text not null,
    primary key (plant_id, number)
  );
  create index journal_transaction on fact.journal (plant_id, transaction);
`;

/** Transaction ids are kept as text: they mean something on one server alone, and nothing once it is another. */
const WORK = `
  create table work.seal_state (
    plant_id uuid primary key,
    server text not null,
    sealed_below text not null
  );
  create table work.head_sent (
    plant_id uuid not null,
    way text not null,
    number integer not null,
    tried_at timestamptz not null,
    trouble text,
    primary key (plant_id, way)
  );
`;
