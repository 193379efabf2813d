import type { Fact } from '../facts/fact.js';

/** SQL: the mark of a defect on its part: D1, D2 ... in the order they were recorded. It never changes. */
export const defectMark = (alias: string): string => `('D' || ${alias}.number)`;

/** SQL: the mark of a repair on its part: R1, R2 ... in the same way. */
export const repairMark = (alias: string): string => `('R' || ${alias}.number)`;

/** SQL: the mark of a touch-up on its part: T1, T2 ... in the same way. */
export const touchUpMark = (alias: string): string => `('T' || ${alias}.number)`;

/** The next number of a defect, repair or touch-up on a part; two at once wait for each other. */
export const nextNumber = async (
  fact: Fact,
  table: 'defect' | 'repair' | 'touch_up',
  partId: string,
): Promise<number> => {
  await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 5))', [`${table}/${partId}`]);
  const [row] = await fact.tx.query<{ next: number }[]>(
    `select coalesce(max(x.number), 0) + 1 as next from fact.${table} x where x.part_id = $1`,
    [partId],
  );
  return row?.next ?? 1;
};
