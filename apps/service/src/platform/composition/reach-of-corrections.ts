import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { PLACES_OF_VERSIONS } from '../places/places.js';

/** What corrections reach: tank lots to compose anew, and places to work out anew. */
export interface Reach {
  /** Lots touched, and all made of them. */
  readonly lots: readonly string[];
  readonly tankLots: readonly string[];
  readonly places: readonly string[];
}

/** Lots whose making a correction touches: of an input, of the lot itself, of the material it is of. */
const LOTS_TOUCHED = `
  select i.lot_id as id from fact.lot_input i where i.id = any($1)
  union select l.root from fact.lot l where l.id = any($1)
  union select l.root from fact.material m join fact.lot l on l.material_id = m.root where m.id = any($1)`;

/** Places whose content or part a correction touches. */
const PLACES_TOUCHED = `
  select u.into_id as id from fact.used u where u.id = any($1)
  union ${PLACES_OF_VERSIONS}`;

const DOWN = `
  with recursive down(id) as (
    select unnest($1::uuid[])
    union
    select i.lot_id from down join fact.lot_input i on i.input_id = down.id and ${standing('i')}
  )
  select down.id, exists (select from derived.composed_lot c where c.lot_id = down.id) as tank from down`;

const USED_IN = `select distinct u.into_id as id from fact.used u where u.lot_id = any($1) and ${standing('u')}`;

/**
 * Finds everything that has to be worked out anew after corrections were written.
 *
 * @param touched ids of what they correct, and of what they put in its place
 */
export const reachOfCorrections = async (tx: EntityManager, touched: readonly unknown[]): Promise<Reach> => {
  if (touched.length === 0) return { lots: [], tankLots: [], places: [] };
  const ids = async (sql: string, parameter: readonly unknown[]): Promise<string[]> =>
    (await tx.query<{ id: string }[]>(sql, [parameter])).map((row) => row.id);
  const lots = await ids(LOTS_TOUCHED, touched);
  const down = await tx.query<{ id: string; tank: boolean }[]>(DOWN, [lots]);
  const places = [
    ...(await ids(PLACES_TOUCHED, touched)),
    ...(await ids(
      USED_IN,
      down.map((lot) => lot.id),
    )),
  ];
  return {
    lots: down.map((lot) => lot.id),
    tankLots: down.filter((lot) => lot.tank).map((lot) => lot.id),
    places: [...new Set(places)],
  };
};
