import type { EntityManager } from 'typeorm';
import type { ScheduleLayer } from '@hull-record/contracts';
import { layersOf } from './layers-of-part.sql.js';
import { NotThere } from '../refusals.js';

/** A layer of the schedule version that a part follows. */
export interface FoundLayer {
  readonly id: string;
  readonly code: string;
  readonly name: string;
  readonly materials: ScheduleLayer['materials'];
  readonly climate: ScheduleLayer['climate'] | null;
  readonly predecessors: readonly string[];
  readonly hold_point: string | null;
}

/**
 * Finds a layer by its code in the schedule version that the part follows.
 *
 * @throws NotThere
 */
export const findScheduleLayer = async (
  tx: EntityManager,
  partId: string,
  code: string,
  pointer: string,
): Promise<FoundLayer> => {
  const [found] = await tx.query<FoundLayer[]>(
    `select y.id, y.code, y.name, y.materials, y.climate, y.predecessors, y.hold_point
     from fact.part p cross join lateral ${layersOf('p')} y where p.id = $1 and y.code = $2`,
    [partId, code],
  );
  if (!found) throw new NotThere('layer', `${code} in the schedule of this part`, pointer);
  return found;
};

/** Layers by their ids, which records of them name. */
export const readScheduleLayers = async (
  tx: EntityManager,
  ids: readonly string[],
): Promise<ReadonlyMap<string, FoundLayer>> => {
  const found = await tx.query<FoundLayer[]>(
    'select y.id, y.code, y.name, y.materials, y.climate, y.predecessors, y.hold_point from fact.schedule_layer y where y.id = any($1)',
    [ids],
  );
  return new Map(found.map((layer) => [layer.id, layer]));
};

/** A layer by its id, which a record of it names. */
export const readScheduleLayer = async (tx: EntityManager, id: string): Promise<FoundLayer> =>
  (await readScheduleLayers(tx, [id])).get(id) as FoundLayer;
