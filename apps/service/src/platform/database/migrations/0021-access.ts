import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Signing in: credentials and sessions in `work`; roles that end, devices revoked, entries confirmed as facts. */
export class Access0021 implements MigrationInterface {
  readonly name = 'Access0021000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(FACTS);
    await runner.query(WORK);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const FACTS = `
  alter table fact.person_role add dealer_id uuid references fact.dealer,
    add constraint person_role_dealer check (dealer_id is null or role = 'dealer');
  create table fact.role_end (${FACT_COLUMNS},
    person_role_id uuid not null references fact.person_role constraint role_ends_once unique,
    reason text not null
  );
  create table fact.device_revoked (${FACT_COLUMNS},
    device_id uuid not null references fact.device,
    reason text not null
  );
  create index device_revoked_device on fact.device_revoked (device_id);
  create table fact.unproved_entry (${FACT_COLUMNS},
    person_id uuid not null references fact.person
  );
  create unique index unproved_entry_once on fact.unproved_entry (entry_id);
  create table fact.entry_confirmation (${FACT_COLUMNS},
    unproved_entry_id uuid not null references fact.unproved_entry constraint entry_confirmed_once unique,
    confirmed boolean not null,
    reason text,
    constraint entry_refused_with_reason check (confirmed or reason is not null)
  );
  create table fact.entry_decision (${FACT_COLUMNS},
    kept_entry_id uuid not null constraint kept_entry_decided_once unique,
    admitted boolean not null,
    reason text not null,
    answer jsonb
  );
`;

const WORK = `
  create table work.credential (
    person_id uuid not null,
    kind text not null constraint credential_kind check (kind in ('pin', 'passphrase')),
    verifier text not null,
    demo boolean not null,
    set_at timestamptz not null,
    primary key (person_id, kind)
  );
  create table work.first_code (
    person_id uuid primary key,
    digest bytea not null,
    until timestamptz not null
  );
  create table work.session (
    digest bytea primary key,
    person_id uuid not null,
    device_id uuid not null,
    csrf text not null,
    begun_at timestamptz not null,
    seen_at timestamptz not null,
    until timestamptz not null,
    ended_at timestamptz
  );
  create index session_person on work.session (person_id) where ended_at is null;
  create index session_device on work.session (device_id, begun_at);
  create table work.sign_in_failure (
    about text primary key,
    failures integer not null,
    locked_until timestamptz not null
  );
  create table work.enrolment_code (
    digest bytea primary key,
    device_id uuid not null,
    until timestamptz not null
  );
  create index enrolment_code_device on work.enrolment_code (device_id);
  create table work.device_credential (
    digest bytea primary key,
    device_id uuid not null,
    enrolled_at timestamptz not null,
    revoked_at timestamptz
  );
  create index device_credential_device on work.device_credential (device_id);
  create table work.api_token (
    id uuid primary key,
    digest bytea not null constraint api_token_once unique,
    person_id uuid not null,
    device_id uuid not null,
    name text not null,
    scopes text[] not null,
    until timestamptz not null,
    used_at timestamptz,
    revoked_at timestamptz
  );
  create table work.kept_entry (
    id uuid primary key,
    device_id uuid not null,
    received_at timestamptz not null,
    path text not null,
    media text not null,
    body bytea not null,
    digest bytea not null,
    constraint kept_entry_once unique (device_id, digest)
  );
  create table work.open_id_link (
    issuer text not null,
    subject text not null,
    person_id uuid not null,
    primary key (issuer, subject)
  );
`;
