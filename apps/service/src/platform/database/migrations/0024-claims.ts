import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Warranty terms by model and year, claims with their photos, marks and decisions, and the defects they became. */
export class Claims0024 implements MigrationInterface {
  readonly name = 'Claims0024000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(WARRANTY);
    await runner.query(CLAIMS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const WARRANTY = `
  create table fact.warranty_terms (${FACT_COLUMNS},
    model_id uuid not null references fact.model,
    version integer not null,
    from_model_year integer not null,
    to_model_year integer not null,
    starts text[] not null,
    covers jsonb not null,
    transfer jsonb not null,
    exclusions text[] not null,
    reason text not null,
    constraint warranty_terms_once unique (model_id, version),
    constraint warranty_terms_years check (from_model_year <= to_model_year)
  );
`;

const CLAIMS = `
  create table fact.claim (${FACT_COLUMNS},
    hull_id uuid not null references fact.hull,
    number integer not null,
    kind text not null,
    reference text,
    dealer_id uuid references fact.dealer,
    reported_on date not null,
    noticed_on date,
    symptoms text not null,
    grade text,
    looks text constraint claim_looks check (looks in ('round', 'irregular')),
    hours_ashore double precision,
    moisture jsonb,
    says text[] not null,
    found_by text not null constraint claim_found_by check (found_by in ('owner or dealer', 'inspection of a hold', 'after a notice')),
    constraint claim_number_once unique (hull_id, number)
  );
  create index claim_reported on fact.claim (plant_id, reported_on desc, id desc);
  create index claim_kind on fact.claim (kind, hull_id);
  create table fact.claim_photo (${FACT_COLUMNS},
    claim_id uuid not null references fact.claim,
    shows text not null constraint claim_photo_shows check (shows in ('HIN plate', 'whole side', 'zone with scale', 'close-up with ruler', 'other')),
    original_sha256 text not null,
    original_type text not null,
    original_bytes integer not null,
    shown_sha256 text not null,
    width integer not null,
    height integer not null
  );
  create index claim_photo_claim on fact.claim_photo (claim_id);
  create table fact.claim_decision (${FACT_COLUMNS},
    claim_id uuid not null references fact.claim,
    decision text not null constraint claim_decision_known check (decision in ('accepted', 'part paid', 'goodwill', 'refused', 'more is asked')),
    reason text not null,
    paid_percent double precision,
    hours double precision,
    cost_amount text,
    cost_currency text,
    term jsonb not null,
    constraint claim_decision_cost check ((cost_amount is null) = (cost_currency is null))
  );
  create index claim_decision_claim on fact.claim_decision (claim_id, happened_at);
  create table fact.claim_mark (${FACT_COLUMNS},
    claim_id uuid not null references fact.claim,
    found_by text not null constraint claim_mark_found_by check (found_by in ('owner or dealer', 'inspection of a hold', 'after a notice')),
    reason text not null
  );
  create index claim_mark_claim on fact.claim_mark (claim_id, happened_at);
  alter table fact.defect add claim_id uuid references fact.claim;
  create index defect_claim on fact.defect (claim_id) where claim_id is not null;
`;
