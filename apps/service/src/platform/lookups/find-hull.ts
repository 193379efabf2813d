import type { EntityManager } from 'typeorm';
import { normaliseNumber } from '@hull-record/trade';
import { standing } from '../facts/standing.js';
import { NotThere } from '../refusals.js';

/** Finds hulls by hull number or any HIN they ever had; those not in the record are missing from the map. */
export const findHulls = async (
  tx: EntityManager,
  numbers: readonly string[],
): Promise<ReadonlyMap<string, string>> => {
  const normalised = new Map(numbers.map((number) => [number, normaliseNumber(number)]));
  const rows = await tx.query<{ normalised: string; hull_id: string }[]>(
    `select n.normalised, n.hull_id from fact.hull_number n join fact.hull h on h.id = n.hull_id
     where n.normalised = any($1) and ${standing('h')}`,
    [[...normalised.values()]],
  );
  const byNumber = new Map(rows.map((row) => [row.normalised, row.hull_id]));
  return new Map(
    [...normalised].flatMap(([number, key]) => {
      const id = byNumber.get(key);
      return id === undefined ? [] : [[number, id] as const];
    }),
  );
};

/**
 * Finds one hull by hull number or any HIN it ever had.
 *
 * @throws NotThere
 */
export const findHull = async (tx: EntityManager, number: string, pointer?: string): Promise<string> => {
  const id = (await findHulls(tx, [number])).get(number);
  if (id === undefined) throw new NotThere('hull', number, pointer);
  return id;
};
