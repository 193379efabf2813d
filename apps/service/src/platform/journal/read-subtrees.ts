import type { ReadSubtree, Subtree } from '@hull-record/evidence';
import type { EntityManager } from 'typeorm';

const SUBTREES = `
  select s.level, s.index::text as index, s.hash from unnest($2::int[], $3::bigint[]) asked(level, index)
  join fact.sealed_subtree s on s.plant_id = $1 and s.level = asked.level and s.index = asked.index`;

/**
 * Fetches stored subtrees in one query, to be read by what makes proofs of them.
 *
 * @throws Error when one that is read was not stored: the table has been tampered with
 */
export const readSubtrees = async (
  tx: EntityManager,
  plantId: string,
  asked: readonly Subtree[],
): Promise<ReadSubtree> => {
  const rows = await tx.query<{ level: number; index: string; hash: Buffer }[]>(SUBTREES, [
    plantId,
    asked.map(({ level }) => level),
    asked.map(({ index }) => index),
  ]);
  const found = new Map(rows.map(({ level, index, hash }) => [`${level}/${index}`, hash]));
  return ({ level, index }) => {
    const hash = found.get(`${level}/${index}`);
    if (!hash) throw new Error(`The sealed journal lacks its subtree ${index} of level ${level}: run npm run verify.`);
    return hash;
  };
};
