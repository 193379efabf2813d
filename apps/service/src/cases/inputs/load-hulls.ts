import type { EntityManager } from 'typeorm';
import { claimedOn, isPrompted } from '../../platform/claims/claim.sql.js';
import { standing } from '../../platform/facts/standing.js';
import type { CaseSettings } from '../settings.js';

/** A hull with the days of its life that the case asks for; days are those of the plant. */
export interface HullRow {
  readonly id: string;
  readonly number: string;
  readonly model: string;
  readonly built: string;
  readonly origin: string | null;
  readonly scrapped: string | null;
  readonly claims: readonly { readonly on: string; readonly prompted: boolean; readonly recordedAt: string }[];
}

const firstDay = (what: string): string => `(
  select to_char(min(f.happened_at) at time zone p.time_zone, 'YYYY-MM-DD') from fact.life_fact f
  where f.hull_id = h.id and f.what = ${what} and ${standing('f')})`;

const HULLS = `
  select h.id, n.as_printed as number, m.code as model, to_char(h.happened_at at time zone p.time_zone, 'YYYY-MM-DD') as built,
    ${firstDay('$2')} as origin, ${firstDay("'scrapped'")} as scrapped,
    coalesce((select json_agg(json_build_object('on', ${claimedOn('c')}, 'prompted', ${isPrompted('c')}, 'recordedAt', c.recorded_at)
        order by ${claimedOn('c')}, c.recorded_at, c.id)
      from fact.claim c where c.hull_id = h.id and c.kind = $3 and ${standing('c')}), '[]') as claims
  from fact.hull h join fact.plant p on p.id = h.plant_id join fact.model m on m.id = h.model_id
  join fact.hull_number n on n.hull_id = h.id and n.kind = 'hull number'
  where h.plant_id = $1 and ${standing('h')} and (cardinality($4::text[]) = 0 or m.code = any($4))
    and ($5::date is null or (h.happened_at at time zone p.time_zone)::date >= $5)
    and ($6::date is null or (h.happened_at at time zone p.time_zone)::date <= $6)
  order by n.normalised`;

/** The hulls of a case, by number. */
export const loadHulls = (tx: EntityManager, plantId: string, settings: CaseSettings): Promise<HullRow[]> => {
  const { origin, kind, models, builtFrom, builtTo } = settings;
  return tx.query<HullRow[]>(HULLS, [plantId, origin, kind, models, builtFrom, builtTo]);
};
