import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { expiryAt, holdsOn, rejectedOf } from '../store/holds.sql.js';
import { uuidOrNull } from '../lookups/uuid-or-null.js';

/** A lot as those who take from it need to know it. */
export interface FoundLot {
  readonly id: string;
  readonly code: string;
  readonly origin: 'received' | 'mixed' | 'tank' | 'cut' | 'unidentified';
  readonly tankId: string | null;
  readonly expiresOn: string | null;
  /** Day, in the time zone of the plant, on which it is taken. */
  readonly takenOn: string;
  /** Whether it had not come yet when it was taken. */
  readonly notYetThere: boolean;
  /** State at the time it is taken; until somebody says otherwise a received lot is quarantined, a made one released. */
  readonly state: 'quarantined' | 'released' | 'held' | 'rejected';
  /** Holds in force when it is taken, each in words. */
  readonly holds: readonly string[];
  /** Containers that had been rejected by themselves, of those it is or may be taken from, each in words. */
  readonly rejected: readonly string[];
  readonly densityKgPerL?: number;
  readonly arealMassKgPerM2?: number;
  readonly pieceMassKg?: number;
}

interface Row {
  readonly place: number;
  readonly id: string;
  readonly code: string;
  readonly origin: FoundLot['origin'];
  readonly tank_id: string | null;
  readonly expires_on: string | null;
  readonly taken_on: string;
  readonly state: FoundLot['state'];
  readonly not_yet_there: boolean;
  readonly holds: string[];
  readonly rejected: string[];
  readonly density: number | null;
  readonly areal_mass: number | null;
  readonly piece_mass: number | null;
}

/** State of a lot at an instant: the newest that had happened; null when nobody had said any. */
export const lotStateAt = (lot: string, at: string): string => `(
  select s.state from fact.lot_state s where s.lot_id = ${lot} and s.happened_at <= ${at} and ${standing('s')}
  order by s.happened_at desc, s.recorded_at desc, s.id limit 1)`;

/** The same, with what holds until somebody says: a received lot is quarantined, a made one released. */
export const stateOrDefault = (l: string, at: string): string =>
  `coalesce(${lotStateAt(`${l}.root`, at)}, case when ${l}.origin = 'received' then 'quarantined' else 'released' end)`;

const FIND = `
  select asked.place::int, l.root as id, l.code, l.origin, l.tank_id, ${expiryAt('l', 'asked.at')}::text as expires_on,
    (asked.at at time zone p.time_zone)::date::text as taken_on,
    ${stateOrDefault('l', 'asked.at')} as state, l.happened_at > asked.at as not_yet_there,
    ${holdsOn('l.root', 'asked.container', 'asked.at')} as holds, ${rejectedOf('l.root', 'asked.container', 'asked.at')} as rejected,
    m.density_kg_per_l as density, m.areal_mass_kg_per_m2 as areal_mass,
    case when l.origin = 'cut' then l.kg else m.piece_mass_kg end as piece_mass
  from unnest($2::text[], $3::timestamptz[], $4::uuid[]) with ordinality asked(text, at, container, place)
  join lateral (
    select * from fact.lot c where c.plant_id = $1 and c.code = asked.text
    union select * from fact.lot r where r.plant_id = $1 and r.root = ${uuidOrNull('asked.text')}) l on ${standing('l')}
  join fact.plant p on p.id = l.plant_id
  left join fact.tank t on t.id = l.tank_id
  left join fact.material m on m.root = coalesce(l.material_id, t.material_id) and ${standing('m')}`;

const toLot = (row: Row): FoundLot => ({
  id: row.id,
  code: row.code,
  origin: row.origin,
  tankId: row.tank_id,
  expiresOn: row.expires_on,
  takenOn: row.taken_on,
  state: row.state,
  notYetThere: row.not_yet_there,
  holds: row.holds,
  rejected: row.rejected,
  ...(row.density === null ? {} : { densityKgPerL: row.density }),
  ...(row.areal_mass === null ? {} : { arealMassKgPerM2: row.areal_mass }),
  ...(row.piece_mass === null ? {} : { pieceMassKg: row.piece_mass }),
});

/** A lot that is asked for. */
export interface AskedLot {
  /** Code or id. */
  readonly name: string;
  /** When it is taken: state, holds and last day of use are as known for then. */
  readonly at: Date;
  /** Id of the container it is taken from; null when none was named. */
  readonly container: string | null;
}

/** Finds lots of a plant, each as it is known for its own time, in the order asked for; undefined: there is none. */
export const findLotsAsked = async (
  tx: EntityManager,
  plantId: string,
  asked: readonly AskedLot[],
): Promise<readonly (FoundLot | undefined)[]> => {
  const rows = await tx.query<Row[]>(FIND, [
    plantId,
    asked.map(({ name }) => name),
    asked.map(({ at }) => at),
    asked.map(({ container }) => container),
  ]);
  const found = new Map(rows.map((row) => [row.place, toLot(row)]));
  return asked.map((_, i) => found.get(i + 1));
};

/**
 * Finds lots of a plant by code or id; those that are not there are missing from the map.
 *
 * @param at when they are taken: state, holds and last day of use are as known for then
 * @param container id of the container they are taken from; null when none was named
 */
export const findLots = async (
  tx: EntityManager,
  plantId: string,
  names: readonly string[],
  at: Date,
  container: string | null = null,
): Promise<ReadonlyMap<string, FoundLot>> => {
  const asked = [...new Set(names)];
  const found = await findLotsAsked(
    tx,
    plantId,
    asked.map((name) => ({ name, at, container })),
  );
  return new Map(asked.flatMap((name, i) => (found[i] ? [[name, found[i]]] : [])));
};
