import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Verdicts on what was made, with the figures and the rule; and what they are judged by: data sheets, rules of the plant. */
export class Verdicts0016 implements MigrationInterface {
  readonly name = 'Verdicts0016000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(VERDICTS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const VERDICTS = `
  create table fact.verdict (${FACT_COLUMNS},
    part_id uuid references fact.part,
    about_kind text not null,
    about_id uuid not null,
    topic text not null,
    verdict text not null constraint verdict_known check (verdict in ('inside', 'outside', 'cannot be judged')),
    detail text not null,
    figures jsonb not null,
    rule text not null,
    source text not null
  );
  create index verdict_about on fact.verdict (about_id);
  create table fact.data_sheet (${FACT_COLUMNS},
    material_id uuid not null references fact.material,
    issue text not null,
    maker_data jsonb not null
  );
  create index data_sheet_material on fact.data_sheet (material_id, happened_at);
  create table fact.plant_rules (${FACT_COLUMNS},
    margin_rule text not null,
    shop_window text,
    barcol_fraction double precision not null constraint plant_rules_fraction check (barcol_fraction > 0 and barcol_fraction <= 1),
    reason text not null
  );
  create index plant_rules_time on fact.plant_rules (plant_id, happened_at);
  alter table fact.layer_record add surface_prepared text;
`;
