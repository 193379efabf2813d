import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { NotThere } from '../platform/refusals.js';
import { findByBadge } from './find-person.js';

/** Ends at once every session and token of a person, and voids a one-time code that was given. */
@Injectable()
export class EndAccess {
  constructor(private readonly db: DataSource) {}

  /** @throws NotThere */
  async run(badge: string): Promise<{ done: true }> {
    return this.db.transaction(async (tx) => {
      const person = await findByBadge(tx, badge);
      if (!person) throw new NotThere('person', badge);
      const of = [person.personId];
      await tx.query('update work.session set ended_at = now() where person_id = $1 and ended_at is null', of);
      await tx.query('update work.api_token set revoked_at = now() where person_id = $1 and revoked_at is null', of);
      await tx.query('delete from work.first_code where person_id = $1', of);
      return { done: true };
    });
  }
}
