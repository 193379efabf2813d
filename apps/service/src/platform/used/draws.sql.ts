import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { standingPlaces } from '../places/places.js';

/** Draws of the lots `$1`, or whose own version is in `$2`; from the instant `$3` on. */
const DRAWS = `
  select u.lot_id as lot, u.container_id as container, u.happened_at as at, place.into_kind as "aboutKind", place.place_id as "aboutId",
    place.part_id as "partId", r.schedule_layer_id as layer
  from fact.used u
  join lateral (${standingPlaces('p.root = u.into_id')}) place on true
  left join fact.layer_record r on r.root = u.into_id and ${standing('r')}
  where (u.lot_id = any($1) or u.id = any($2)) and u.happened_at >= $3 and ${standing('u')}
  union all
  select i.input_id, i.container_id, l.happened_at, 'lot', l.root, null, null
  from fact.lot_input i join fact.lot l on l.root = i.lot_id and ${standing('l')}
  where (i.input_id = any($1) or i.id = any($2)) and l.happened_at >= $3 and ${standing('i')}
  order by 3, 5, 1`;

/** Something drawn of a lot: for a layer, joint, repair or touch-up, or for another lot. */
export interface Draw {
  readonly lot: string;
  readonly container: string | null;
  readonly at: Date;
  readonly aboutKind: string;
  readonly aboutId: string;
  readonly partId: string | null;
  /** Of the schedule; null when it is not a layer. */
  readonly layer: string | null;
}

/** Draws of these lots, and the draws whose own version is named; of all times, unless it says since when. */
export const drawsOf = (
  tx: EntityManager,
  { lots, versions, since }: { lots: readonly string[]; versions: readonly unknown[]; since?: Date },
): Promise<Draw[]> => tx.query<Draw[]>(DRAWS, [lots, versions, since ?? '-infinity']);
