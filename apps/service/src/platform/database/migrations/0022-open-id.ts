import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Sign-ins by the office that have been begun and not finished. */
export class OpenId0022 implements MigrationInterface {
  readonly name = 'OpenId0022000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(OPEN_ID);
  }

  /** Forward only, as every migration here. */
  down(): Promise<void> {
    throw new Error('Forward only; restore a backup instead.');
  }
}

const OPEN_ID = `
  create table work.open_id_try (
    digest bytea primary key,
    state text not null,
    nonce text not null,
    verifier text not null,
    device_digest bytea,
    session_digest bytea,
    begun_at timestamptz not null,
    until timestamptz not null
  );
  create index open_id_try_until on work.open_id_try (until);
  create index open_id_link_person on work.open_id_link (person_id);
`;
