import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';
import { AMOUNT_COLUMNS } from './0002-materials.js';

/** Containers, holds, and what becomes of material other than being used: losses, counts, retests. */
export class Store0008 implements MigrationInterface {
  readonly name = 'Store0008000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(CONTAINERS);
    await runner.query(HOLDS);
    await runner.query(LOTS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const CONTAINERS = `
  create table fact.container (${FACT_COLUMNS},
    lot_id uuid not null references fact.lot,
    label text not null,
    kind text not null,
    ${AMOUNT_COLUMNS}
  );
  create unique index container_label_once on fact.container (plant_id, label) where root = id;
  create index container_lot on fact.container (lot_id);
  create table fact.container_fact (${FACT_COLUMNS},
    container_id uuid not null references fact.container,
    what text not null constraint container_fact_known check (what in ('moved', 'opened', 'returned to stock', 'emptied', 'rejected', 'accepted')),
    place text,
    note text,
    constraint container_fact_says_where check (what not in ('moved', 'returned to stock') or place is not null)
  );
  create index container_fact_container on fact.container_fact (container_id, happened_at);
  alter table fact.used add column container_id uuid references fact.container;
  create index used_container on fact.used (container_id) where container_id is not null;
  alter table fact.lot_input add column container_id uuid references fact.container;
  create index lot_input_container on fact.lot_input (container_id) where container_id is not null;
`;

const HOLDS = `
  create table fact.hold (${FACT_COLUMNS},
    lot_id uuid not null references fact.lot,
    container_id uuid references fact.container,
    kind text not null constraint hold_kind_known check (kind in ('quality', 'safety')),
    reason text not null
  );
  create index hold_lot on fact.hold (lot_id, happened_at);
  create table fact.hold_lift (${FACT_COLUMNS},
    hold_id uuid not null references fact.hold,
    turn integer not null check (turn > 0),
    reason text not null,
    constraint hold_lift_once unique (hold_id, turn)
  );
`;

/** A count may find nothing, so its columns are not those of an amount that was taken. */
const LOTS = `
  create table fact.lot_loss (${FACT_COLUMNS},
    lot_id uuid not null references fact.lot,
    container_id uuid references fact.container,
    what text not null constraint lot_loss_known check (what in ('scrapped', 'purged', 'line flushed', 'spilled', 'sample retained', 'returned to supplier')),
    reason text not null,
    place text,
    ${AMOUNT_COLUMNS}
  );
  create index lot_loss_lot on fact.lot_loss (lot_id);
  create table fact.lot_count (${FACT_COLUMNS},
    lot_id uuid not null references fact.lot,
    container_id uuid references fact.container,
    quantity numeric not null check (quantity >= 0),
    unit text not null,
    kg double precision not null check (kg >= 0),
    note text
  );
  create index lot_count_lot on fact.lot_count (lot_id, happened_at);
  create table fact.lot_retest (${FACT_COLUMNS},
    lot_id uuid not null references fact.lot,
    expires_on date not null,
    certificate jsonb not null,
    result text not null
  );
  create index lot_retest_lot on fact.lot_retest (lot_id, happened_at);
`;
