import type { EntityManager } from 'typeorm';
import { claimedOn, isPrompted } from '../../platform/claims/claim.sql.js';
import { standing } from '../../platform/facts/standing.js';
import { MEMORY } from '../../platform/database/memory.sql.js';
import type { CaseSettings } from '../settings.js';

/** A hull with the days of its life that the case asks for: days of the plant, counted from 1970-01-01. */
export interface HullRow {
  readonly id: string;
  readonly number: string;
  readonly model: string;
  readonly built: number;
  readonly origin: number | null;
  readonly scrapped: number | null;
  readonly claims: readonly { readonly on: number; readonly prompted: boolean; readonly recordedAt: string }[];
  /** Short numbers of its parts, as far as they have one. */
  readonly parts: readonly number[];
}

const dayNumber = (date: string): string => `(${date}) - date '1970-01-01'`;
const day = (at: string): string => dayNumber(`(${at} at time zone p.time_zone)::date`);

/** Facts of hulls are gathered by set, once each: a question for each hull would be asked a hundred thousand times. */
const HULLS = `
  with life as (
    select f.hull_id, min(f.happened_at) filter (where f.what = $2) as origin, min(f.happened_at) filter (where f.what = 'scrapped') as scrapped
    from fact.life_fact f where f.plant_id = $1 and f.what in ($2, 'scrapped') and ${standing('f')} group by 1),
  claims as (
    select c.hull_id, json_agg(json_build_object('on', ${dayNumber(claimedOn('c'))}, 'prompted', ${isPrompted('c')}, 'recordedAt', c.recorded_at)
      order by ${claimedOn('c')}, c.recorded_at, c.id) as told
    from fact.claim c where c.plant_id = $1 and c.kind = $3 and ${standing('c')} group by 1),
  pieces as (
    select j.hull_id, string_agg(n.number::text, ' ') as parts
    from fact.joint j join derived.part_number n on n.part_id = j.part_id
    where j.plant_id = $1 and ${standing('j')} group by 1)
  select h.id, n.as_printed as number, m.code as model, ${day('h.happened_at')} as built,
    ${day('life.origin')} as origin, ${day('life.scrapped')} as scrapped, claims.told as claims, pieces.parts
  from fact.hull h join fact.plant p on p.id = h.plant_id join fact.model m on m.id = h.model_id
  join fact.hull_number n on n.hull_id = h.id and n.kind = 'hull number'
  left join life on life.hull_id = h.id left join claims on claims.hull_id = h.id left join pieces on pieces.hull_id = h.id
  where h.plant_id = $1 and ${standing('h')} and (cardinality($4::text[]) = 0 or m.code = any($4))
    and ($5::date is null or (h.happened_at at time zone p.time_zone)::date >= $5)
    and ($6::date is null or (h.happened_at at time zone p.time_zone)::date <= $6)
  order by n.normalised`;

type Row = Omit<HullRow, 'claims' | 'parts'> & {
  readonly claims: HullRow['claims'] | null;
  readonly parts: string | null;
};

/** The hulls of a case, by number. */
export const loadHulls = async (tx: EntityManager, plantId: string, settings: CaseSettings): Promise<HullRow[]> => {
  const { origin, kind, models, builtFrom, builtTo } = settings;
  await tx.query(MEMORY);
  const rows = await tx.query<Row[]>(HULLS, [plantId, origin, kind, models, builtFrom, builtTo]);
  return rows.map(({ claims, parts, ...row }) => ({
    ...row,
    claims: claims ?? [],
    parts: parts === null ? [] : parts.split(' ').map(Number),
  }));
};
