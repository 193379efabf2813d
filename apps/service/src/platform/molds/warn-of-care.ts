import type { Fact } from '../facts/fact.js';
import { careOverdue } from './mold.sql.js';

/** Warns whoever begins a part in a mold of care that is overdue. Never a nonconformity: what is due is common practice. */
export const warnOfCare = async (fact: Fact, moldId: string): Promise<void> => {
  const [row] = await fact.tx.query<[{ overdue: string[] }]>(
    `select ${careOverdue('$1::uuid', '$2::timestamptz')} as overdue`,
    [moldId, fact.happenedAt],
  );
  for (const due of row.overdue) fact.warn(`Care of the mold is overdue: ${due}.`);
};
