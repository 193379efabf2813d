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

type Columns<K extends keyof RolledHull> = { readonly [C in K]: readonly RolledHull[C][] };
type Days = (typeof ROLL_DAYS)[RollDay];

/** Hulls of a block in columns. Texts have `BETWEEN` between; what is null is so for all of them, see `renewRoll`. */
interface Block extends Columns<'model' | 'built'>, Partial<Readonly<Record<Days, readonly (number | null)[] | null>>> {
  readonly id: string;
  readonly number: string;
  /** Null where it is as `number`. */
  readonly normalised: string | null;
  readonly parts: readonly number[];
  readonly partsOf: readonly number[];
}

/** How hulls are read: as they are rolled, and from facts what is not rolled or out of date. */
export type RollFrom = 'roll' | 'facts';

const STALE = `select case when ${NOTHING_ROLLED} then null
  else array(select distinct hull_id from derived.stale_hull) end as hulls`;

const BLOCKS = 'select hulls from derived.hull_block where plant_id = $1';

const IN_PLANT = 'select h.id from fact.hull h where h.plant_id = $1';
const read = (roll: string): string =>
  `select ${ROLL_COLUMNS.map((column) => `r."${column}"`).join(', ')} from (${roll}) r where r.plant_id = $1`;
const ALL = read(rollOf((hull) => `${hull} in (${IN_PLANT})`));
const SOME = read(rollOf((hull) => `${hull} = any($2::uuid[])`));

/**
 * All hulls of a plant, by number; each is made as it is come to, for a plant of twenty years has more of them than are
 * quickly cleared away. In the transaction of its caller, whose instant tells what is out of date.
 *
 * @param from 'facts' reads nothing that is rolled: the same answer, slowly
 */
export const readRoll = async (
  tx: EntityManager,
  plantId: string,
  from: RollFrom = 'roll',
): Promise<Iterable<RolledHull>> => {
  const [{ hulls: stale } = { hulls: null }] =
    from === 'roll' ? await tx.query<{ hulls: string[] | null }[]>(STALE) : [{ hulls: null }];
  await tx.query(MEMORY);
  if (stale === null) return sorted(await tx.query<RolledHull[]>(ALL, [plantId]));
  const rows = await tx.query<{ hulls: Block }[]>(BLOCKS, [plantId]);
  const blocks = rows.map(({ hulls }) => hulls).sort((a, b) => compare(firstOf(a), firstOf(b)));
  if (stale.length === 0 && followEachOther(blocks)) return { [Symbol.iterator]: () => hullsIn(blocks) };
  const others = stale.length === 0 ? [] : await tx.query<RolledHull[]>(SOME, [plantId, stale]);
  const outOfDate = new Set(stale);
  return sorted([...[...hullsIn(blocks)].filter(({ id }) => !outOfDate.has(id)), ...others]);
};

/** The first day of a kind in the life of a hull. */
export const dayOfLife = (hull: Pick<RolledHull, (typeof ROLL_DAYS)[RollDay]>, what: RollDay): number | null =>
  hull[ROLL_DAYS[what]];

function* hullsIn(blocks: readonly Block[]): Generator<RolledHull, undefined> {
  for (const block of blocks) {
    const [ids, numbers] = [block.id.split(BETWEEN), block.number.split(BETWEEN)];
    const normalised = block.normalised?.split(BETWEEN) ?? numbers;
    let part = 0;
    for (let i = 0; i < block.built.length; i += 1) {
      const parts = block.parts.slice(part, part + (block.partsOf[i] as number));
      part += parts.length;
      yield {
        id: ids[i] as string,
        number: numbers[i] as string,
        normalised: normalised[i] as string,
        model: block.model[i] as string,
        built: block.built[i] as number,
        left: block.left?.[i] ?? null,
        atDealer: block.atDealer?.[i] ?? null,
        sold: block.sold?.[i] ?? null,
        registered: block.registered?.[i] ?? null,
        scrapped: block.scrapped?.[i] ?? null,
        parts,
      };
    }
  }
}

const firstOf = ({ number, normalised }: Block): string => (normalised ?? number).split(BETWEEN, 1)[0] as string;
const lastOf = ({ number, normalised }: Block): string => {
  const text = normalised ?? number;
  return text.slice(text.lastIndexOf(BETWEEN) + 1);
};

/** Whether all hulls of each block come before those of the next, as where hulls are numbered in the order of their making. */
const followEachOther = (blocks: readonly Block[]): boolean =>
  blocks.every((block, i) => i === 0 || lastOf(blocks[i - 1] as Block) < firstOf(block));

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const sorted = (hulls: RolledHull[]): readonly RolledHull[] =>
  hulls.sort((a, b) => compare(a.normalised, b.normalised));
