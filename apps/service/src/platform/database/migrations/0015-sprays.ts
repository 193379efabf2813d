import type { MigrationInterface, QueryRunner } from 'typeorm';

/** What ties resin and catalyst of one spray together, and how much was sprayed of both. */
export class Sprays0015 implements MigrationInterface {
  readonly name = 'Sprays0015000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(SPRAYS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

const SPRAYS = ['used', 'lot_input']
  .map(
    (table) => `
      alter table fact.${table} add spray_id uuid, add sprayed numeric,
        add constraint ${table}_spray check ((spray_id is null) = (sprayed is null));
      create index ${table}_sprayed on fact.${table} (gun_id, happened_at) where spray_id is not null;`,
  )
  .join('');
