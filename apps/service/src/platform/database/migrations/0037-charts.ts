import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Limits of charts, frozen from the hulls of a chosen period. */
export class Charts0037 implements MigrationInterface {
  readonly name = 'Charts0037000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(CHARTS);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

/** Figures are in SI, spreads as differences: a chart is shown in the unit that its reader chose. */
const CHARTS = `
  create table fact.chart_limits (${FACT_COLUMNS},
    what text not null,
    model_id uuid not null references fact.model,
    part_kind text not null,
    layer text,
    mold_id uuid references fact.mold,
    gun_id uuid references fact.equipment,
    area text,
    from_day date not null,
    to_day date not null,
    hulls integer not null constraint chart_limits_from_hulls check (hulls >= 2),
    settings jsonb not null,
    figures jsonb not null,
    reason text not null,
    constraint chart_limits_period check (to_day >= from_day)
  );
  create index chart_limits_model on fact.chart_limits (model_id, what, happened_at);
`;
