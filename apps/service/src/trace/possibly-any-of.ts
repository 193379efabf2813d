import type { EntityManager } from 'typeorm';
import type { PossiblyAnyOf } from '@hull-record/contracts';
import { CANDIDATES } from '../platform/lots/candidates.sql.js';
import { standing } from '../platform/facts/standing.js';

/** So many lots are named; when there are more their number tells. */
const NAMED_AT_MOST = 50;

const FIND = `
  select c.lot_id as id, count(*)::int as number,
    (array_agg(l.code order by l.happened_at desc, l.code))[1:${NAMED_AT_MOST}] as lots
  from (${CANDIDATES}) c join fact.lot l on l.root = c.candidate_id and ${standing('l')}
  where c.lot_id = any($1) group by c.lot_id`;

/** Of each unidentified lot among these, which lots it may be of; other lots are not in the map. */
export const possiblyAnyOf = async (
  tx: EntityManager,
  lots: readonly string[],
): Promise<ReadonlyMap<string, PossiblyAnyOf>> => {
  const unidentified = await tx.query<{ root: string }[]>(
    `select u.root from fact.lot u where u.root = any($1) and u.origin = 'unidentified' and ${standing('u')}`,
    [lots],
  );
  const ids = unidentified.map(({ root }) => root);
  const rows = ids.length === 0 ? [] : await tx.query<({ id: string } & PossiblyAnyOf)[]>(FIND, [ids]);
  const found = new Map(rows.map(({ id, number, lots: named }) => [id, { number, lots: named }]));
  return new Map(ids.map((id) => [id, found.get(id) ?? { number: 0, lots: [] }]));
};
