import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Outside repairs that dealers report of own hulls, each with a note and photos. */
export class RepairsByDealers0047 implements MigrationInterface {
  readonly name = 'RepairsByDealers0047000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(REPAIRS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

/** No dealer repairs within the plant: what one reports was done outside, and nobody of the plant witnessed it. */
const REPAIRS = `
  alter table fact.repair
    add dealer_id uuid references fact.dealer,
    add note text,
    add constraint repair_of_a_dealer_is_outside check (dealer_id is null or outside is not null);
  create table fact.repair_photo (${FACT_COLUMNS},
    repair_id uuid not null references fact.repair,
    shows text not null constraint repair_photo_shows check (shows in ('before', 'ground out', 'laid up', 'finished', 'other')),
    original_sha256 text not null,
    original_type text not null,
    original_bytes integer not null,
    shown_sha256 text not null,
    width integer not null,
    height integer not null
  );
  create index repair_photo_repair on fact.repair_photo (repair_id);
`;
