import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Texts that lie apart from the record, and the redacted copies of texts and photos. */
export class Redactions0040 implements MigrationInterface {
  readonly name = 'Redactions0040000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(REDACTIONS);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const REDACTIONS = `
  create table work.free_text (
    commitment text primary key,
    value text not null,
    salt text not null,
    entry_id uuid not null
  );
  create index free_text_entry on work.free_text (entry_id);
  create table fact.text_redacted (${FACT_COLUMNS},
    of_table text not null,
    of_root uuid not null,
    field text not null,
    wording text not null,
    reason text not null,
    original text not null constraint text_redacted_original check (original in ('erased', 'kept apart', 'in the journal'))
  );
  create index text_redacted_of on fact.text_redacted (of_root, field);
  create table fact.photo_redacted (${FACT_COLUMNS},
    photo_id uuid not null,
    areas jsonb not null,
    reason text not null,
    original text not null constraint photo_redacted_original check (original in ('erased', 'kept apart')),
    shown_sha256 text not null
  );
  create index photo_redacted_photo on fact.photo_redacted (photo_id);
`;
