import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** What layers, lots and defects are judged by: areas and plies, certificates, counts, and the acceptance levels of flaws. */
export class TradeRules0020 implements MigrationInterface {
  readonly name = 'TradeRules0020000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(TRADE_RULES);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const TRADE_RULES = `
  alter table fact.schedule_layer add area_m2 double precision, add loss_allowance double precision, add laminate jsonb;
  alter table fact.lot add certified jsonb;
  alter table fact.defect add counted integer, add counted_area_m2 double precision;
  create table fact.flaw_limits (${FACT_COLUMNS},
    level text constraint flaw_limits_level check (level in ('I', 'II', 'III')),
    rows jsonb not null,
    reason text not null
  );
  create index flaw_limits_time on fact.flaw_limits (plant_id, happened_at);
`;
