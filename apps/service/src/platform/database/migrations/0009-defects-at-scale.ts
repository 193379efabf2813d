import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Touch-ups with their limits, what is asked of a defect, re-inspections, outside repairs, scrapped parts. */
export class DefectsAtScale0009 implements MigrationInterface {
  readonly name = 'DefectsAtScale0009000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(TOUCH_UPS);
    await runner.query(REPAIRS);
    await runner.query(PARTS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const TOUCH_UPS = `
  alter table fact.used
    drop constraint used_into_known,
    add constraint used_into_known check (into_kind in ('layer', 'joint', 'repair', 'touch-up', 'mold care'));
  create table fact.touch_up (${FACT_COLUMNS},
    part_id uuid not null references fact.part,
    number integer not null check (number > 0),
    makers uuid[] not null check (cardinality(makers) > 0),
    spots jsonb not null,
    note text,
    constraint touch_up_makers unique (id, makers)
  );
  create unique index touch_up_number_once on fact.touch_up (part_id, number) where root = id;
  create index touch_up_root on fact.touch_up (root);
  create table fact.touch_up_acceptance (${FACT_COLUMNS},
    touch_up_id uuid not null,
    makers uuid[] not null,
    accepted_by uuid not null references fact.person,
    accepted boolean not null,
    note text,
    turn integer not null check (turn > 0),
    constraint touch_up_acceptance_of_what_was_done foreign key (touch_up_id, makers) references fact.touch_up (id, makers),
    constraint touch_up_acceptance_by_another_person check (accepted_by <> all (makers)),
    constraint touch_up_acceptance_once unique (touch_up_id, turn)
  );
  create table fact.touch_up_limit (${FACT_COLUMNS},
    spots_in_a_zone integer not null check (spots_in_a_zone >= 0),
    spots_on_a_part integer not null check (spots_on_a_part >= 0),
    largest_mm double precision not null check (largest_mm > 0),
    source text not null
  );
`;

const REPAIRS = `
  create table fact.re_inspection (${FACT_COLUMNS},
    repair_id uuid not null,
    makers uuid[] not null,
    inspected_by uuid not null references fact.person,
    passed boolean not null,
    note text,
    constraint re_inspection_of_the_repair_as_made foreign key (repair_id, makers) references fact.repair (id, makers),
    constraint re_inspection_by_another_person check (inspected_by <> all (makers))
  );
  create index re_inspection_repair on fact.re_inspection (repair_id);
  alter table fact.repair add column outside jsonb;
  create table fact.ask_answer (${FACT_COLUMNS},
    defect_id uuid not null references fact.defect,
    lot_id uuid references fact.lot,
    gun_id uuid references fact.equipment,
    note text,
    constraint ask_answer_names_something check (num_nonnulls(lot_id, gun_id, note) > 0)
  );
  create index ask_answer_defect on fact.ask_answer (defect_id);
`;

const PARTS = `
  create table fact.part_scrapped (${FACT_COLUMNS},
    part_id uuid not null references fact.part,
    turn integer not null check (turn > 0),
    reason text not null,
    constraint part_scrapped_once unique (part_id, turn)
  );
`;
