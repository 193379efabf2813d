import type { FreezeCase } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { InvalidRequest } from '../platform/refusals.js';

/** SQL: whether a hull is of the models of the case, `$4`; none: of any. */
const ofCase = (hull: string): string => `(cardinality($4::text[]) = 0 or exists (
  select from fact.hull h join fact.model y on y.id = h.model_id where h.id = ${hull} and y.code = any($4)))`;

/** SQL: the day of the first claim of the kind, `$2`. */
const FIRST_CLAIM = `(
  select min(coalesce(c.noticed_on, c.reported_on)) from fact.claim c where c.plant_id = $1 and c.kind = $2 and ${standing('c')})`;

/**
 * The first hold of any kind, after the first claim of this kind, that reached hulls of the case which had left the plant. From
 * then on claims are looked for where what is held went, and no longer where they are.
 */
const FIRST_HOLD = `
  select to_char((h.happened_at at time zone p.time_zone) - interval '1 day', 'YYYY-MM-DD') as day
  from fact.hold h join fact.plant p on p.id = h.plant_id
  where h.plant_id = $1 and h.happened_at <= $3 and ${standing('h')}
    and (h.happened_at at time zone p.time_zone)::date > ${FIRST_CLAIM}
    and exists (
      select from fact.hold_reached r left join fact.joint j on j.part_id = r.part_id and ${standing('j')}
      join fact.life_fact f on f.hull_id = coalesce(r.hull_id, j.hull_id) and f.what = 'left the place of manufacture'
        and f.happened_at <= h.happened_at and ${standing('f')}
      where r.hold_id = h.root and ${standing('r')} and ${ofCase('f.hull_id')})
  order by h.happened_at limit 1`;

/** The first letter of a notice to a hull of the case after the first claim of this kind: whoever has one looks for what it says. */
const FIRST_LETTER = `
  select to_char((m.happened_at at time zone p.time_zone) - interval '1 day', 'YYYY-MM-DD') as day
  from fact.notice_mailing m join fact.plant p on p.id = m.plant_id
  where m.plant_id = $1 and m.happened_at <= $3 and ${standing('m')} and ${ofCase('m.hull_id')}
    and (m.happened_at at time zone p.time_zone)::date > ${FIRST_CLAIM}
  order by m.happened_at limit 1`;

const TODAY = `
  select to_char($2::timestamptz at time zone p.time_zone, 'YYYY-MM-DD') as day,
    to_char(now() at time zone p.time_zone, 'YYYY-MM-DD') as "recordedOn" from fact.plant p where p.id = $1`;

/** A day that no look comes to. */
const NO_END = '9999-12-31';

/**
 * The day until which hulls are looked at, and why. A look never goes further than its own day.
 *
 * Throws InvalidRequest where claims recorded after the freeze alone count, and none could by the cut-off that is named.
 */
export const cutOffOf = async (
  fact: Fact,
  { cutOff, kind, models, claims }: FreezeCase,
): Promise<{ readonly cutOff: string; readonly cutOffBecause: string }> => {
  const { plantId } = fact.author;
  const [today] = (await fact.tx.query<Today[]>(TODAY, [plantId, fact.happenedAt])) as [Today];
  const freshAlone = claims === 'recorded after this freeze';
  if (cutOff !== undefined && freshAlone && cutOff <= today.recordedOn)
    throw new InvalidRequest([
      {
        pointer: '/cutOff',
        detail: `must be after ${today.recordedOn}, or left out: claims recorded after this freeze alone count, and none would`,
      },
    ]);
  if (cutOff !== undefined) return { cutOff, cutOffBecause: 'as named' };
  if (freshAlone)
    return {
      cutOff: NO_END,
      cutOffBecause: 'each look until its own day: claims that a hold or a letter brought to light are set aside',
    };
  const firstOf = async (sql: string): Promise<string> => {
    const [found] = await fact.tx.query<{ day: string }[]>(sql, [plantId, kind, fact.happenedAt, models]);
    return found?.day ?? NO_END;
  };
  const [held, mailed] = [await firstOf(FIRST_HOLD), await firstOf(FIRST_LETTER)];
  if (mailed < held) return { cutOff: mailed, cutOffBecause: 'the day before the first letter of a notice was mailed' };
  if (held !== NO_END)
    return { cutOff: held, cutOffBecause: 'the day before the first hold that reached hulls which had left' };
  return {
    cutOff: today.day,
    cutOffBecause: 'the day on which the settings were frozen; there was no hold and no letter',
  };
};

interface Today {
  readonly day: string;
  readonly recordedOn: string;
}
