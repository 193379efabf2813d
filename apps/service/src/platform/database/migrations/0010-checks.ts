import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Going on under nonconformance, rework that was done, badges in any case. */
export class Checks0010 implements MigrationInterface {
  readonly name = 'Checks0010000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(CHECKS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const CHECKS = `
  create table fact.go_on (${FACT_COLUMNS},
    part_id uuid references fact.part,
    layer text,
    lot_code text,
    rules text[] not null check (cardinality(rules) > 0),
    reason text not null,
    led_by uuid not null references fact.person,
    constraint go_on_of_a_layer_or_a_mix check ((part_id is null) = (layer is null) and (part_id is null) <> (lot_code is null))
  );
  create index go_on_part on fact.go_on (part_id, layer);
  create index go_on_lot on fact.go_on (lot_code) where lot_code is not null;
  create table fact.rework (${FACT_COLUMNS},
    disposition_id uuid not null references fact.disposition,
    makers uuid[] not null check (cardinality(makers) > 0),
    inspected_by uuid not null references fact.person,
    note text not null,
    turn integer not null check (turn > 0),
    constraint rework_inspected_by_another_person check (inspected_by <> all (makers)),
    constraint rework_once unique (disposition_id, turn)
  );
  create unique index person_badge_once_in_any_case on fact.person (lower(badge));
`;
