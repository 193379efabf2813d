import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Photos of the certificates that lots come with. */
export class LotPhotos0030 implements MigrationInterface {
  readonly name = 'LotPhotos0030000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(PHOTOS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const PHOTOS = `
  create table fact.lot_photo (${FACT_COLUMNS},
    lot_id uuid not null references fact.lot,
    original_sha256 text not null,
    original_type text not null,
    original_bytes integer not null,
    shown_sha256 text not null,
    width integer not null,
    height integer not null
  );
  create index lot_photo_lot on fact.lot_photo (lot_id);
`;
