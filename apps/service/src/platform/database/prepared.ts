import { createHash } from 'node:crypto';
import type { EntityManager } from 'typeorm';

type Query = (text: unknown, values?: unknown, ...others: unknown[]) => unknown;
interface Connection {
  query: Query;
}

/** Names by text: there are some hundred statements, all written in this program. */
const names = new Map<string, string>();

const nameOf = (text: string): string => {
  const known = names.get(text);
  if (known !== undefined) return known;
  const name = createHash('sha256').update(text).digest('hex').slice(0, 32);
  names.set(text, name);
  return name;
};

/** Of many rows at once; another number of rows is another statement, and each would be kept. */
const isLongInsert = (text: string): boolean => text.startsWith('INSERT') && text.length > 3_000;

/**
 * How the database plans what a fact asks: once for all, from row to row over indexes. It would weigh the values of each
 * run anew, which takes longer than the run; and a plan that was made while the tables were empty, and is kept, would
 * read them from end to end when they are not.
 */
const BY_INDEX = `select set_config('plan_cache_mode', 'force_generic_plan', true), ${[
  'seqscan',
  'hashjoin',
  'mergejoin',
]
  .map((way) => `set_config('enable_${way}', 'off', true)`)
  .join(', ')}`;

/**
 * Has the database keep the plans of the statements that are run until `work` ends: recording a fact runs the same
 * dozens of statements each time, and planning them takes longer than running them.
 *
 * Only where amounts are small: a kept plan does not look at how many rows are asked for. The way of planning holds
 * until the transaction ends.
 */
export const prepared = async <T>(tx: EntityManager, work: () => Promise<T>): Promise<T> => {
  await tx.query(BY_INDEX);
  const connection = (await tx.queryRunner?.connect()) as Connection;
  const query = connection.query;
  connection.query = (text, values, ...others) =>
    typeof text === 'string' && Array.isArray(values) && values.length > 0 && !isLongInsert(text)
      ? query.call(connection, { name: nameOf(text), text, values }, ...others)
      : query.call(connection, text, values, ...others);
  try {
    return await work();
  } finally {
    connection.query = query;
  }
};
