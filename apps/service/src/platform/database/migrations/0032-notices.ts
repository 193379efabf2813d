import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** The duty to notify as it was decided; notices, the letters of them, and the reports to the authority. */
export class Notices0032 implements MigrationInterface {
  readonly name = 'Notices0032000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(NOTICES);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const NOTICES = `
  create table fact.duty_decision (${FACT_COLUMNS},
    hold_id uuid not null references fact.hold,
    decision text not null constraint duty_decision_known check (decision in ('none', 'fails a rule', 'substantial risk of injury')),
    discovered_on date not null,
    decided_by uuid not null references fact.person,
    why text not null,
    rule text,
    counsel text,
    constraint duty_decision_names_rule check (decision <> 'fails a rule' or rule is not null)
  );
  create index duty_decision_hold on fact.duty_decision (hold_id, happened_at);
  create table fact.notice (${FACT_COLUMNS},
    hold_id uuid not null references fact.hold,
    code text not null,
    contents jsonb not null
  );
  create unique index notice_code_once on fact.notice (plant_id, code) where root = id;
  create index notice_hold on fact.notice (hold_id);
  create table fact.notice_mailing (${FACT_COLUMNS},
    notice_id uuid not null references fact.notice,
    to_what text not null constraint notice_mailing_to check (to_what in ('dealer', 'first purchaser', 'later owner')),
    hull_id uuid not null references fact.hull,
    dealer_id uuid references fact.dealer,
    owner_id uuid references fact.owner,
    class text not null,
    proof text,
    constraint notice_mailing_to_one check (num_nonnulls(dealer_id, owner_id) = 1 and (dealer_id is not null) = (to_what = 'dealer'))
  );
  create index notice_mailing_notice on fact.notice_mailing (notice_id);
  create table fact.mailing_returned (${FACT_COLUMNS},
    mailing_id uuid not null references fact.notice_mailing,
    turn integer not null check (turn > 0),
    why text not null,
    constraint mailing_returned_once unique (mailing_id, turn)
  );
  create table fact.notice_report (${FACT_COLUMNS},
    notice_id uuid not null references fact.notice,
    what text not null constraint notice_report_known check (what in ('initial', 'follow-up')),
    turn integer not null check (turn > 0),
    sent_on date not null,
    proof text,
    figures jsonb not null,
    constraint notice_report_once unique (notice_id, what, turn)
  );
`;
