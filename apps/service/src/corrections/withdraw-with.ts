import { CorrectionEntity } from '../platform/facts/correction.entity.js';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { assertWithdrawable } from './assert-withdrawable.js';
import { GOES_WITH } from './correctable.js';

/** Goes with another fact, and has itself what must not lose it: a duty to notify and a notice rest on a hold. */
const STANDS_FOR_OTHERS: ReadonlySet<string> = new Set(['hold']);

/** Withdraws what cannot stand without a fact that is withdrawn: a layer that was never made used nothing. */
export const withdrawWith = async (
  fact: Fact,
  table: string,
  id: string,
  root: string,
  reason: string,
): Promise<void> => {
  for (const { table: dependent, column } of GOES_WITH[table] ?? []) {
    const rows = await fact.tx.query<{ id: string; root: string }[]>(
      `select x.id, x.root from fact.${dependent} x where x.${column} = any($1) and ${standing('x')} order by x.id`,
      [[id, root]],
    );
    await fact.insertMany(
      CorrectionEntity,
      rows.map((row) => ({ corrects: row.id, correctsTable: dependent, replacement: null, reason })),
    );
    if (STANDS_FOR_OTHERS.has(dependent))
      for (const row of rows) await assertWithdrawable(fact.tx, dependent, row.root);
    for (const row of rows) await withdrawWith(fact, dependent, row.id, row.root, reason);
  }
};
