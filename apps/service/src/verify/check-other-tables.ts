import type { EntityManager } from 'typeorm';
import { childId } from '../platform/ids.js';
import { fault, type TamperFault } from './fault.js';

interface Plant {
  readonly id: string;
  readonly code: string;
  readonly time_zone: string;
}

interface Opened {
  readonly id: string;
  readonly body: { readonly plant?: { readonly code: string; readonly timeZone: string } };
  readonly result: { readonly plant: string };
}

/** Plants against the entries that opened them. */
export const checkPlants = async (tx: EntityManager): Promise<readonly TamperFault[]> => {
  const plants = await tx.query<Plant[]>('select id, code, time_zone from fact.plant order by code');
  const entries = await tx.query<{ entry: string }[]>("select entry from fact.journal where kind = 'plant opened'");
  const opened = new Map(
    entries.map(({ entry }) => {
      const told = JSON.parse(entry) as Opened;
      return [childId(told.id, 'plant'), told];
    }),
  );
  return plants.flatMap(({ id, code, time_zone: zone }) => {
    const told = opened.get(id);
    if (!told) return [fault('added', 'fact.plant', id, 'no entry of the journal opened it.')];
    // Entries of earlier versions do not say the time zone.
    const same = told.result.plant === code && (told.body.plant?.timeZone ?? zone) === zone;
    return same ? [] : [fault('changed', 'fact.plant', id, 'it is not what the entry that opened it says.')];
  });
};

const UNNAMED_IDS = `
  select k.id from fact.client_id k where not exists (select from fact.journal j where j.id = k.id) order by k.id limit 10`;

/** Entries that were never sealed though all of their time are: put in behind the service, or under a false transaction. */
const PASSED_OVER = `
  select j.id from fact.journal j join work.seal_state w on w.plant_id = j.plant_id
  join pg_control_system() c on c.system_identifier::text = w.server
  where j.transaction < w.sealed_below::xid8 and not exists (select from fact.sealed_entry s where s.entry_id = j.id)
  order by j.position limit 10`;

/** Ids and entries that are there without what belongs to them. */
export const checkLeftOver = async (tx: EntityManager): Promise<readonly TamperFault[]> => {
  const ids = await tx.query<{ id: string }[]>(UNNAMED_IDS);
  const passed = await tx.query<{ id: string }[]>(PASSED_OVER);
  return [
    ...ids.map(({ id }) => fault('added', 'fact.client_id', id, 'no entry was recorded under it.')),
    ...passed.map(({ id }) => fault('added', 'fact.journal', id, 'it was not there when all of its time was sealed.')),
  ];
};
