import type { EntityManager } from 'typeorm';
import type { ReachedHull, ReachQuery } from '@hull-record/contracts';
import { toPage } from '../http/cursor.js';
import { findLot, type AskedLot } from './find-lot.js';
import { placesOfMadeLot, type ReachedPlace } from './places-of-made-lot.js';
import { REACH_OF_SOURCE, reachedHulls, reachGiven } from './reach.sql.js';

/** A hull that holds some of a lot, with the key that it stands by in the order of the answer. */
export type ReachRow = ReachedHull & { readonly key: string };

/** A question in SQL; its parameters without the key and limit of a page, which stand fourth and fifth. */
export interface ReachStatement {
  /** Id of the lot that is asked for. */
  readonly lot: string;
  readonly sql: string;
  readonly parameters: readonly unknown[];
}

/** The key after which a page begins; null: the first. */
export type ReachKey = string | number | null;
/** Some of the hulls, and the cursor of those that follow; null: there are no more. */
export interface ReachRows {
  items: ReachRow[];
  next: string | null;
}

/**
 * Asks which hulls hold some of a lot, named by code or id.
 *
 * @throws NotThere
 */
export const askReach = async (
  tx: EntityManager,
  lot: string,
  query: Pick<ReachQuery, 'minShare' | 'belowFloor'>,
): Promise<ReachStatement> => {
  const asked = await findLot(tx, lot);
  const parameters = [asked.id, query.minShare, query.belowFloor === 'members only'];
  if (asked.received) return { lot: asked.id, sql: reachedHulls(REACH_OF_SOURCE), parameters };
  const places = await placesOfMadeLot(tx, asked.id);
  return { lot: asked.id, sql: reachedHulls(reachGiven(6)), parameters: [...parameters, ...columns(places)] };
};

/** Reads those after a key, at most so many. */
export const readReach = async (
  tx: EntityManager,
  { sql, parameters }: ReachStatement,
  after: ReachKey,
  limit: number,
): Promise<ReachRows> => {
  const given = [...parameters.slice(0, 3), after, limit + 1, ...parameters.slice(3)];
  return toPage(await tx.query<ReachRow[]>(sql, given), limit, (row) => [row.key]);
};

/**
 * Reads, of a lot, the hulls of some parts that hold it; with them all that possibly do, up to a limit.
 *
 * @param parts ids of parts; one that does not hold the lot is left out
 */
export const readReachOfParts = async (
  tx: EntityManager,
  { id, received }: AskedLot,
  parts: readonly string[],
  limit: number,
): Promise<readonly ReachRow[]> => {
  const places = received
    ? await tx.query<ReachedPlace[]>(KEPT_PLACES, [id, parts])
    : (await placesOfMadeLot(tx, id)).filter(({ partId }) => parts.includes(partId));
  return tx.query<ReachRow[]>(reachedHulls(reachGiven(6)), [id, 0, false, null, limit, ...columns(places)]);
};

const KEPT_PLACES = `
  select s.place_id as "placeId", s.part_id as "partId", s.into_kind as "intoKind", s.role, s.kg, s.basis, s.first_at as "firstAt", s.last_at as "lastAt"
  from derived.place_source s where s.source_id = $1 and s.part_id = any($2)`;

/** Worked-out places as the arrays that `reachGiven` takes. */
export const columns = (places: readonly ReachedPlace[]): unknown[][] => [
  places.map(({ placeId }) => placeId),
  places.map(({ partId }) => partId),
  places.map(({ intoKind }) => intoKind),
  places.map(({ role }) => role),
  places.map(({ kg }) => kg),
  places.map(({ basis }) => basis),
  places.map(({ firstAt }) => firstAt),
  places.map(({ lastAt }) => lastAt),
];
