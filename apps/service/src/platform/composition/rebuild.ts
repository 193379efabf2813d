import type { DataSource, EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { composeTanks } from './compose-tanks.js';
import { meetGenealogy } from './meet-genealogy.js';
import { refreshPlaces } from './refresh-places.js';

/** So many places at a time, for the memory of this process. */
const PLACES_AT_ONCE = 500;

/** What was worked out. */
export interface Rebuilt {
  readonly tankLots: number;
  readonly places: number;
}

/**
 * Works out everything derived anew from the facts of a plant, as if nothing had been kept: new versions of all tank
 * compositions, and what is in each layer, joint and repair. Nobody records meanwhile.
 */
export const rebuildDerived = (db: DataSource, plantId: string): Promise<Rebuilt> =>
  db.transaction(async (tx) => {
    await meetGenealogy(tx, plantId, 'alone');
    const tankLots = await ids(tx, TANK_LOTS, plantId);
    const [last] = await tx.query<{ id: string }[]>(
      'select id from fact.journal where plant_id = $1 order by position desc limit 1',
      [plantId],
    );
    if (last) await composeTanks(tx, tankLots, last.id);
    const places = await ids(tx, PLACES_OF_PLANT, plantId);
    for (let i = 0; i < places.length; i += PLACES_AT_ONCE)
      await refreshPlaces(tx, places.slice(i, i + PLACES_AT_ONCE), 'alone');
    return { tankLots: tankLots.length, places: places.length };
  });

const TANK_LOTS = `select l.root as id from fact.lot l where l.plant_id = $1 and l.origin = 'tank' and ${standing('l')}`;

const PLACES_OF_PLANT = `
  select distinct u.into_id as id from fact.used u where u.plant_id = $1
  union select s.place_id from derived.place_source s join fact.part p on p.id = s.part_id where p.plant_id = $1`;

const ids = async (tx: EntityManager, sql: string, plantId: string): Promise<string[]> =>
  (await tx.query<{ id: string }[]>(sql, [plantId])).map((row) => row.id);
