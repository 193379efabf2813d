import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Parts moved to another version of a schedule. */
export class PartSchedule0013 implements MigrationInterface {
  readonly name = 'PartSchedule0013000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(PART_SCHEDULE);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const PART_SCHEDULE = `
  create table fact.part_schedule (${FACT_COLUMNS},
    part_id uuid not null references fact.part,
    schedule_id uuid not null references fact.schedule,
    from_layer text not null,
    turn integer not null check (turn > 0),
    reason text not null,
    constraint part_schedule_once unique (part_id, turn)
  );
`;
