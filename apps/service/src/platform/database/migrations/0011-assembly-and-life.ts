import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Fitted items, readings of joints, owners, HINs corrected by an authority. */
export class AssemblyAndLife0011 implements MigrationInterface {
  readonly name = 'AssemblyAndLife0011000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(ASSEMBLY);
    await runner.query(LIFE);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const ASSEMBLY = `
  alter table fact.reading
    drop constraint reading_of_known,
    add constraint reading_of_known check (of_kind in ('layer', 'repair', 'joint'));
  create table fact.fitted_item (${FACT_COLUMNS},
    hull_id uuid not null references fact.hull,
    what text not null,
    serial text not null,
    maker text,
    customer_supplied boolean not null,
    note text
  );
  create index fitted_item_hull on fact.fitted_item (hull_id);
  create index fitted_item_serial on fact.fitted_item (lower(serial));
  create table fact.item_removed (${FACT_COLUMNS},
    fitted_item_id uuid not null references fact.fitted_item,
    turn integer not null check (turn > 0),
    reason text not null,
    constraint item_removed_once unique (fitted_item_id, turn)
  );
`;

/** Personal data lies in work, where it can be erased; the record holds a salted commitment alone. */
const LIFE = `
  alter table fact.hull_number add column authority text;
  create table fact.owner (${FACT_COLUMNS},
    hull_id uuid not null references fact.hull,
    what text not null constraint owner_known check (what in ('first purchaser', 'later owner')),
    commitment text not null
  );
  create index owner_hull on fact.owner (hull_id);
  create table fact.owner_erased (${FACT_COLUMNS},
    owner_id uuid not null constraint owner_erased_once unique references fact.owner,
    reason text not null
  );
  create table work.owner_detail (
    owner_id uuid primary key,
    detail jsonb not null,
    salt text not null
  );
`;
