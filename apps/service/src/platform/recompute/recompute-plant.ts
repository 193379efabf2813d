import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { composeTanks } from '../composition/compose-tanks.js';
import { inputsFirstOf } from '../composition/inputs-first-of.js';
import { meetGenealogy } from '../composition/meet-genealogy.js';
import { refreshPlaces } from '../composition/refresh-places.js';
import { FinishRecomputation } from './finish-recomputation.js';

/** So many tank lots in one transaction: others of the plant wait for it. */
const LOTS_AT_ONCE = 20;
/** So many places in one transaction: nobody waits, but each is locked. */
const PLACES_AT_ONCE = 100;

const STALE_LOTS = `
  select s.lot_id as id, bool_or(s.tank) as tank, (max(r.asked_at::text || '/' || r.id)) as because
  from work.stale_lot s join work.recomputation r on r.id = s.recomputation_id
  where r.plant_id = $1 and not s.done group by s.lot_id`;

const STALE_PLACES = `
  select distinct s.place_id as id from work.stale_place s join work.recomputation r on r.id = s.recomputation_id
  where r.plant_id = $1 and not s.done order by 1 limit ${PLACES_AT_ONCE}`;

interface StaleLot {
  readonly id: string;
  readonly tank: boolean;
  readonly because: string;
}

/**
 * Works out anew what corrections reached in a plant: tank lots in order, then places, then judges what came to light.
 *
 * In short steps, each whole: it may be ended after any, and goes on where it was.
 */
@Injectable()
export class RecomputePlant {
  constructor(
    private readonly db: DataSource,
    private readonly finish: FinishRecomputation,
  ) {}

  /** @throws what `stop` gives as its reason, after the step that runs */
  async run(plantId: string, stop: AbortSignal): Promise<void> {
    do stop.throwIfAborted();
    while (await this.step(plantId));
  }

  private async step(plantId: string): Promise<boolean> {
    return (
      (await this.db.transaction((tx) => composeSome(tx, plantId))) ||
      (await this.db.transaction((tx) => workOutSome(tx, plantId))) ||
      (await this.finish.oldestOf(plantId))
    );
  }
}

const composeSome = async (tx: EntityManager, plantId: string): Promise<boolean> => {
  await meetGenealogy(tx, plantId, 'alone');
  const lots = await tx.query<StaleLot[]>(STALE_LOTS, [plantId]);
  const tanks = lots.filter(({ tank }) => tank);
  // What is only mixed or cut is kept nowhere: when the tanks are done, so is it.
  if (tanks.length === 0) return (await setLotsDone(tx, lots), false);
  const next = (await inOrder(tx, lots)).slice(0, LOTS_AT_ONCE);
  for (const [entry, some] of byEntry(next)) await composeTanks(tx, some, entry);
  await setLotsDone(tx, next);
  return true;
};

/** Tank lots, those first that others are made of. */
const inOrder = async (tx: EntityManager, lots: readonly StaleLot[]): Promise<readonly StaleLot[]> => {
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  const order = await inputsFirstOf(tx, [...byId.keys()]);
  return order.flatMap((id) => byId.get(id) ?? []).filter(({ tank }) => tank);
};

/** Neighbours in the order that are composed because of the same entry. */
const byEntry = (lots: readonly StaleLot[]): readonly (readonly [string, readonly string[]])[] => {
  const runs: [string, string[]][] = [];
  for (const { id, because } of lots) {
    const entry = because.slice(because.indexOf('/') + 1);
    const last = runs.at(-1);
    if (last?.[0] === entry) last[1].push(id);
    else runs.push([entry, [id]]);
  }
  return runs;
};

const setLotsDone = async (tx: EntityManager, lots: readonly StaleLot[]): Promise<void> => {
  await tx.query('update work.stale_lot set done = true where lot_id = any($1) and not done', [
    lots.map(({ id }) => id),
  ]);
};

const workOutSome = async (tx: EntityManager, plantId: string): Promise<boolean> => {
  await meetGenealogy(tx, plantId, 'one of many');
  // A correction may have come since the tanks were done.
  const lots = await tx.query<StaleLot[]>(STALE_LOTS, [plantId]);
  if (lots.length > 0) return true;
  const places = (await tx.query<{ id: string }[]>(STALE_PLACES, [plantId])).map(({ id }) => id);
  if (places.length === 0) return false;
  await refreshPlaces(tx, places, 'one of many');
  await tx.query('update work.stale_place set done = true where place_id = any($1) and not done', [places]);
  return true;
};
