import { standing } from '../facts/standing.js';

/** What something is used in, on a part. */
export type PlaceKind = 'layer' | 'joint' | 'repair' | 'touch-up';

/** Each kind of place with the table of its facts; every text below is built from this list. */
export const PLACE_TABLES: Readonly<Record<PlaceKind, string>> = {
  layer: 'layer_record',
  joint: 'joint',
  repair: 'repair',
  'touch-up': 'touch_up',
};

const KINDS = Object.entries(PLACE_TABLES) as [PlaceKind, string][];

const unionOf = (select: (kind: PlaceKind, table: string) => string): string =>
  KINDS.map(([kind, table]) => select(kind, table)).join(' union all ');

/**
 * SQL of the places that stand, as place_id, part_id and into_kind.
 *
 * @param where condition on a place `p`, such as `p.root = any($1)`
 */
export const standingPlaces = (where: string): string =>
  unionOf(
    (kind, table) =>
      `select p.root as place_id, p.part_id, '${kind}' as into_kind from fact.${table} p where ${where} and ${standing('p')}`,
  );

/** SQL of the place, by its root, of every version of a place whose id is in `$1`. */
export const PLACES_OF_VERSIONS = unionOf(
  (_kind, table) => `select p.root as place_id from fact.${table} p where p.id = any($1)`,
);
