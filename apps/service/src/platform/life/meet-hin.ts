import type { EntityManager } from 'typeorm';

/** Waits for the HIN of a hull, until the end of the transaction: of two who assign or affix it, the second sees the first. */
export const meetHin = async (tx: EntityManager, hullId: string): Promise<void> => {
  await tx.query('select pg_advisory_xact_lock(hashtextextended($1, 6))', [hullId]);
};
