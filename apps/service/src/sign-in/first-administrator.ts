import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { FIRST_BADGE } from '../platform/people/first.js';
import { rolesAt } from '../platform/access/roles.sql.js';
import { standing } from '../platform/facts/standing.js';
import { FirstCodes } from './first-codes.js';

const SOMEBODY = `
  select from fact.person p join work.credential c on c.person_id = p.root and (not c.demo or $1)
  where 'administrator' = any(${rolesAt('p.root', 'now()')}) and ${standing('p')} limit 1`;

/** Sees at start that somebody can sign in who can let the others in. */
@Injectable()
export class FirstAdministrator {
  constructor(
    private readonly db: DataSource,
    private readonly codes: FirstCodes,
  ) {}

  /** A new one-time code for the first administrator while no administrator can sign in; else null. */
  async code(demo: boolean): Promise<{ badge: string; code: string } | null> {
    const somebody = await this.db.query<unknown[]>(SOMEBODY, [demo]);
    if (somebody.length > 0) return null;
    const { code } = await this.codes.give(FIRST_BADGE);
    return { badge: FIRST_BADGE, code };
  }
}
