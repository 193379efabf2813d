import type { EntityManager } from 'typeorm';
import { standing } from '../../platform/facts/standing.js';
import { standingPlaces } from '../../platform/places/places.js';

/** Kilograms of one lot that were used on one hull, or on a part that is in none. */
export interface UsedOnOwner {
  readonly lot: string;
  /** Id of the hull, or of the part that is in none. */
  readonly owner: string;
  readonly joined: boolean;
  readonly parts: readonly string[];
  readonly kg: number;
}

/** SQL: what was used on hulls and parts; `where` says of which uses `u` and joints `j`. */
const USED = (where: string): string => `
  select u.lot_id as lot, coalesce(j.hull_id, place.part_id) as owner, j.hull_id is not null as joined,
    array_agg(distinct place.part_id) as parts, sum(u.kg) as kg
  from fact.used u
  cross join lateral (${standingPlaces('p.root = u.into_id')}) place
  left join fact.joint j on j.part_id = place.part_id and ${standing('j')}
  where ${where} and ${standing('u')} group by 1, 2, 3 order by 1, 2`;

/** Where some lots were used. */
export const usedOfLots = (tx: EntityManager, lots: readonly string[]): Promise<UsedOnOwner[]> =>
  tx.query(USED('u.lot_id = any($1)'), [lots]);

/** SQL: the layers, joints, repairs and touch-ups of the parts of hulls `$1`. */
const PLACES_OF_HULLS = `
  select place.place_id from fact.joint i
  cross join lateral (${standingPlaces('p.part_id = i.part_id')}) place
  where i.hull_id = any($1) and ${standing('i')}`;

/** What was used on some hulls. */
export const usedOnHulls = (tx: EntityManager, hulls: readonly string[]): Promise<UsedOnOwner[]> =>
  tx.query(USED(`u.into_id in (${PLACES_OF_HULLS})`), [hulls]);
