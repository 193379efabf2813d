import type { FreezeCase } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';

/**
 * The first hold, after the first claim of this kind, on a lot that is in hulls which left the plant. From then on claims
 * are looked for where the lot is, and no longer where they are.
 */
const FIRST_HOLD = `
  select to_char((h.happened_at at time zone p.time_zone) - interval '1 day', 'YYYY-MM-DD') as day
  from fact.hold h join fact.plant p on p.id = h.plant_id
  where h.plant_id = $1 and h.happened_at <= $3 and ${standing('h')}
    and (h.happened_at at time zone p.time_zone)::date > (
      select min(coalesce(c.noticed_on, c.reported_on)) from fact.claim c where c.plant_id = $1 and c.kind = $2 and ${standing('c')})
    and exists (select from derived.place_source s join fact.joint j on j.part_id = s.part_id and ${standing('j')}
      join fact.life_fact f on f.hull_id = j.hull_id and f.what = 'left the place of manufacture' and f.happened_at <= h.happened_at and ${standing('f')}
      where s.source_id = h.lot_id)
  order by h.happened_at limit 1`;

/** The first letter of a notice after the first claim of this kind: whoever has one looks for what it says. */
const FIRST_LETTER = `
  select to_char((m.happened_at at time zone p.time_zone) - interval '1 day', 'YYYY-MM-DD') as day
  from fact.notice_mailing m join fact.plant p on p.id = m.plant_id
  where m.plant_id = $1 and m.happened_at <= $3 and ${standing('m')}
    and (m.happened_at at time zone p.time_zone)::date > (
      select min(coalesce(c.noticed_on, c.reported_on)) from fact.claim c where c.plant_id = $1 and c.kind = $2 and ${standing('c')})
  order by m.happened_at limit 1`;

const TODAY = `select to_char($2::timestamptz at time zone p.time_zone, 'YYYY-MM-DD') as day from fact.plant p where p.id = $1`;

/** The day until which hulls are looked at, and why. */
export const cutOffOf = async (
  fact: Fact,
  { cutOff, kind }: FreezeCase,
): Promise<{ readonly cutOff: string; readonly cutOffBecause: string }> => {
  if (cutOff !== undefined) return { cutOff, cutOffBecause: 'as named' };
  const { plantId } = fact.author;
  const firstOf = async (sql: string): Promise<string> => {
    const [found] = await fact.tx.query<{ day: string }[]>(sql, [plantId, kind, fact.happenedAt]);
    return found?.day ?? '9999';
  };
  const [held, mailed] = [await firstOf(FIRST_HOLD), await firstOf(FIRST_LETTER)];
  if (mailed < held) return { cutOff: mailed, cutOffBecause: 'the day before the first letter of a notice was mailed' };
  if (held !== '9999')
    return { cutOff: held, cutOffBecause: 'the day before the first hold on a lot in hulls that had left' };
  const [today] = (await fact.tx.query<{ day: string }[]>(TODAY, [plantId, fact.happenedAt])) as [{ day: string }];
  return {
    cutOff: today.day,
    cutOffBecause: 'the day on which the settings were frozen; there was no hold and no letter',
  };
};
