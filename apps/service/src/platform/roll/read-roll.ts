import type { EntityManager } from 'typeorm';
import { MEMORY } from '../database/memory.sql.js';
import { BETWEEN, NOTHING_ROLLED, ROLL_COLUMNS, ROLL_DAYS, rollOf, type RollDay } from './roll.sql.js';

/** A hull with the days of its life: days of the plant, counted from 1970-01-01. */
export interface RolledHull {
  readonly id: string;
  readonly number: string;
  /** The number by which hulls are sorted. */
  readonly normalised: string;
  readonly model: string;
  readonly built: number;
  /** First day of each kind; null when there was none. */
  readonly left: number | null;
  readonly atDealer: number | null;
  readonly sold: number | null;
  readonly registered: number | null;
  readonly scrapped: number | null;
  /** Short numbers of its parts, as far as they have one. */
  readonly parts: readonly number[];
}

/** A block has the columns of its hulls: some as one text (`JOINED`), the others as lists. */
type Block = {
  readonly [K in keyof RolledHull]: K extends 'id' | 'number' | 'normalised' ? string : readonly RolledHull[K][];
};

/** How hulls are read: as they are rolled, and from facts what is not rolled or out of date. */
export type RollFrom = 'roll' | 'facts';

const STALE = `select case when ${NOTHING_ROLLED} then null
  else array(select distinct hull_id from derived.stale_hull) end as hulls`;

const IN_PLANT = 'select h.id from fact.hull h where h.plant_id = $1';
const read = (roll: string): string =>
  `select ${ROLL_COLUMNS.map((column) => `r."${column}"`).join(', ')} from (${roll}) r where r.plant_id = $1`;
const ALL = read(rollOf((hull) => `${hull} in (${IN_PLANT})`));
const SOME = read(rollOf((hull) => `${hull} = any($2::uuid[])`));

/**
 * All hulls of a plant, by number. In the transaction of its caller, whose instant tells what is out of date.
 *
 * @param from 'facts' reads nothing that is rolled: the same answer, slowly
 */
export const readRoll = async (tx: EntityManager, plantId: string, from: RollFrom = 'roll'): Promise<RolledHull[]> => {
  const [{ hulls: stale } = { hulls: null }] =
    from === 'roll' ? await tx.query<{ hulls: string[] | null }[]>(STALE) : [{ hulls: null }];
  await tx.query(MEMORY);
  if (stale === null) return sorted(await tx.query<RolledHull[]>(ALL, [plantId]));
  const hulls = await rolled(tx, plantId, new Set(stale));
  if (stale.length > 0) hulls.push(...(await tx.query<RolledHull[]>(SOME, [plantId, stale])));
  return sorted(hulls);
};

/** The first day of a kind in the life of a hull. */
export const dayOfLife = (hull: Pick<RolledHull, (typeof ROLL_DAYS)[RollDay]>, what: RollDay): number | null =>
  hull[ROLL_DAYS[what]];

const rolled = async (tx: EntityManager, plantId: string, stale: ReadonlySet<string>): Promise<RolledHull[]> => {
  const blocks = await tx.query<{ hulls: Block }[]>(
    'select hulls from derived.hull_block where plant_id = $1 order by block',
    [plantId],
  );
  const hulls: RolledHull[] = [];
  for (const { hulls: block } of blocks) {
    const [ids, numbers, normalised] = [block.id, block.number, block.normalised].map((text) => text.split(BETWEEN));
    ids?.forEach((id, i) => {
      if (stale.size > 0 && stale.has(id)) return;
      hulls.push({
        id,
        number: numbers?.[i] as string,
        normalised: normalised?.[i] as string,
        model: block.model[i] as string,
        built: block.built[i] as number,
        left: block.left[i] as number | null,
        atDealer: block.atDealer[i] as number | null,
        sold: block.sold[i] as number | null,
        registered: block.registered[i] as number | null,
        scrapped: block.scrapped[i] as number | null,
        parts: block.parts[i] as readonly number[],
      });
    });
  }
  return hulls;
};

const sorted = (hulls: RolledHull[]): RolledHull[] =>
  hulls.sort((a, b) => (a.normalised < b.normalised ? -1 : a.normalised > b.normalised ? 1 : 0));
