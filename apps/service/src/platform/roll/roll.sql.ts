import { standing } from '../facts/standing.js';

/** What is kept of the life of a hull: the first day of each kind, and the name that it has in the roll. */
export const ROLL_DAYS = {
  'left the place of manufacture': 'left',
  'at dealer': 'atDealer',
  'sold to first purchaser': 'sold',
  'warranty registered': 'registered',
  scrapped: 'scrapped',
} as const;

export type RollDay = keyof typeof ROLL_DAYS;

/** What the roll has of a hull, and so the columns of `rollOf`. */
export const ROLL_COLUMNS = [
  ...['id', 'number', 'normalised', 'model', 'built', 'parts'],
  ...Object.values(ROLL_DAYS),
] as const;

/** What a block has of its hulls: the parts of all in one list, and how many of them each has. */
export const BLOCK_COLUMNS = [...ROLL_COLUMNS, 'partsOf'] as const;
export type BlockColumn = (typeof BLOCK_COLUMNS)[number];

/** Ids and numbers are one text in a block, with a character between that no code may have. */
export const BETWEEN = '\n';

/** SQL: nothing was rolled yet. */
export const NOTHING_ROLLED = 'exists (select from derived.stale_hull none where none.hull_id is null)';

/** SQL: what is in the roll of the hull of this id is not what it is now. */
export const isStaleHull = (hull: string): string =>
  `exists (select from derived.stale_hull stale where stale.hull_id = ${hull})`;

const day = (at: string): string => `(${at} at time zone p.time_zone)::date - date '1970-01-01'`;
const DAYS = Object.entries(ROLL_DAYS);

/**
 * SQL: standing hulls with the days of their life and the short numbers of their parts; days are those of the plant, counted
 * from 1970-01-01. Facts are gathered by set, once each: a question for each hull would be asked a hundred thousand times.
 *
 * @param which condition on the id of a hull
 */
export const rollOf = (which: (hull: string) => string): string => `
  with life as (
    select f.hull_id, ${DAYS.map(([what, name]) => `min(f.happened_at) filter (where f.what = '${what}') as "${name}"`).join(', ')}
    from fact.life_fact f
    where ${which('f.hull_id')} and f.what in (${DAYS.map(([what]) => `'${what}'`).join(', ')}) and ${standing('f')} group by 1),
  pieces as (
    select j.hull_id, array_agg(n.number order by n.number) as parts
    from fact.joint j join derived.part_number n on n.part_id = j.part_id
    where ${which('j.hull_id')} and ${standing('j')} group by 1)
  select h.plant_id, h.id, n.as_printed as number, m.code as model, ${day('h.happened_at')} as built,
    ${DAYS.map(([, name]) => `${day(`life."${name}"`)} as "${name}"`).join(', ')}, coalesce(pieces.parts, '{}') as parts,
    n.normalised
  from fact.hull h join fact.plant p on p.id = h.plant_id join fact.model m on m.id = h.model_id
  join fact.hull_number n on n.hull_id = h.id and n.kind = 'hull number'
  left join life on life.hull_id = h.id left join pieces on pieces.hull_id = h.id
  where ${which('h.id')} and ${standing('h')}`;
