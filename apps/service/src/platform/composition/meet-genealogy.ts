import type { EntityManager } from 'typeorm';

export type GenealogyLock = 'one of many' | 'alone';

/**
 * Waits for the genealogy of a plant, until the end of the transaction: many may extend it at a time, but while a
 * correction rewrites it nobody else reads or extends it.
 */
export const meetGenealogy = async (tx: EntityManager, plantId: string, as: GenealogyLock): Promise<void> => {
  const lock = as === 'alone' ? 'pg_advisory_xact_lock' : 'pg_advisory_xact_lock_shared';
  await tx.query(`select ${lock}(hashtextextended($1, 3))`, [plantId]);
};
