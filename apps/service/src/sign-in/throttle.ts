import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { createHash } from 'node:crypto';
import { TooManyTries } from '../platform/access/access-refusals.js';
import { findByBadge } from './find-person.js';

/** Wrong tries before what they are about is locked for a minute; each further one doubles that, to an hour. */
const LIMITS = { 'badge here': 5, here: 20, badge: 50 } as const;

/** How many counters stand for all that is nobody's badge: few, so that none tells what was typed. */
const UNKNOWN_AS = 1_024;

/**
 * Counts a try before it is made, so that a hundred at once are no more than the limit. Nothing is counted while it is
 * locked; a day without tries forgets.
 */
const COUNT = `
  insert into work.sign_in_failure as f (about, failures, locked_until) values ($1, 1, now())
  on conflict (about) do update set
    failures = case when f.locked_until < now() - interval '1 day' then 1 else f.failures + 1 end,
    locked_until = case when f.locked_until >= now() - interval '1 day' and f.failures + 1 >= $2
      then now() + least(interval '1 hour', interval '1 minute' * power(2, least(f.failures + 1 - $2, 10))) else now() end
  where f.locked_until <= now()
  returning failures`;

/** Slows down who tries badge and PIN: by the two together from one place, by the place, and by the badge from anywhere. */
@Injectable()
export class Throttle {
  constructor(private readonly db: DataSource) {}

  /**
   * Counts a try at a badge from a place (a device or an address).
   *
   * @throws TooManyTries when it is locked
   */
  async count(badge: string, place: string): Promise<void> {
    for (const [about, limit] of countersOf(await this.nameOf(badge), place)) {
      const counted = await this.db.query<unknown[]>(COUNT, [about, limit]);
      if (counted.length === 0) throw new TooManyTries(await this.secondsLeft(about));
    }
  }

  /** Forgets the tries after one that was right; those at other badges from there stay. */
  async forget(badge: string, place: string): Promise<void> {
    const [[both], ...others] = countersOf(await this.nameOf(badge), place);
    await this.db.query('delete from work.sign_in_failure where about = $1', [both]);
    await this.db.query(
      'update work.sign_in_failure set failures = greatest(failures - 1, 0), locked_until = now() where about = any($1)',
      [others.map(([about]) => about)],
    );
  }

  /**
   * By what tries at a badge are counted. What is nobody's badge may be a secret that was typed into the wrong field: it
   * is not kept, but counted with others under one of few numbers, so that it is stopped as soon as a badge would be.
   */
  private async nameOf(badge: string): Promise<string> {
    const person = await findByBadge(this.db.manager, badge);
    if (person) return `badge ${person.badge.toLowerCase()}`;
    return `no badge, ${createHash('sha256').update(badge.toLowerCase()).digest().readUInt16BE() % UNKNOWN_AS}`;
  }

  private async secondsLeft(about: string): Promise<number> {
    const [row] = await this.db.query<{ s: number }[]>(
      'select greatest(1, ceil(extract(epoch from locked_until - now())))::int as s from work.sign_in_failure where about = $1',
      [about],
    );
    return row?.s ?? 1;
  }
}

const countersOf = (
  name: string,
  place: string,
): [readonly [string, number], readonly [string, number], readonly [string, number]] => [
  [`${name} from ${place}`, LIMITS['badge here']],
  [`from ${place}`, LIMITS.here],
  [name, LIMITS.badge],
];
