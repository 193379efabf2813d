import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { verifierOf } from './verifier.js';

/** Everybody's PIN in the demo. It is no secret: it serves only while the demo is on, and only on this machine. */
export const DEMO_PIN = '402817';

const GIVE = `
  insert into work.credential (person_id, kind, verifier, demo, set_at)
  select p.root, 'pin', $2, true, now() from fact.person p
  where p.badge = any($1) and not exists (select from work.credential c where c.person_id = p.root)
  on conflict do nothing`;

/** The demo's people sign in with one PIN that everybody knows; what they had is gone when the demo is off. */
@Injectable()
export class DemoPins {
  private verifier: Promise<string> | undefined;

  constructor(private readonly db: DataSource) {}

  /** Gives the PIN to those who have nothing of their own. */
  async give(badges: readonly string[]): Promise<void> {
    this.verifier ??= verifierOf(DEMO_PIN);
    await this.db.query(GIVE, [badges, await this.verifier]);
  }

  /** Takes it from everybody, and ends the sessions that were begun with it. */
  async takeAway(): Promise<void> {
    await this.db.transaction(async (tx) => {
      await tx.query(
        `update work.session s set ended_at = now() from work.credential c
         where c.person_id = s.person_id and c.demo and s.ended_at is null`,
      );
      await tx.query('delete from work.credential where demo');
    });
  }
}
