import type { EntityManager } from 'typeorm';
import type { HullView } from '@hull-record/contracts';
import { keepUntil, RETENTION_RULES, type RetentionRule } from '@hull-record/trade';
import { standing } from '../facts/standing.js';

/** When a boat was built, and when and where it was placed on the market, as days of the plant. */
const DATES = `
  select f.what, f.market, (f.happened_at at time zone p.time_zone)::date::text as day
  from fact.life_fact f join fact.plant p on p.id = f.plant_id
  where f.hull_id = $1 and f.what in ('released', 'left the place of manufacture') and ${standing('f')} order by f.happened_at, f.id`;

/**
 * Until when the record of a hull is kept at least, by the rules of the markets it was placed on; by the longest of all
 * while no market is named. Nothing while it is not released.
 */
export const keptUntil = async (tx: EntityManager, hullId: string): Promise<HullView['keepUntil']> => {
  const facts = await tx.query<{ what: string; market: string | null; day: string }[]>(DATES, [hullId]);
  const released = facts.find(({ what }) => what === 'released');
  if (!released) return null;
  const placed = facts.find(({ what }) => what === 'left the place of manufacture');
  const named = facts.flatMap(({ market }) => market ?? []);
  const rules = Object.values<RetentionRule>(RETENTION_RULES).filter(
    ({ market }) => named.length === 0 || named.includes(market),
  );
  const found = keepUntil({ builtOn: released.day, placedOn: placed?.day ?? null }, rules);
  if (!found) return null;
  const { market, years, from, source } = found.rule;
  const because = `${market}: ${years} years from the day it was ${from}${named.length === 0 ? '; no market is on record, so the longest rule holds' : ''}.`;
  return { day: found.day, because, source };
};
