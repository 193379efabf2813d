import type { EntityManager } from 'typeorm';

/** `open`: any number at a time. `closed`: alone in the plant, for one that must see all that stands. */
export type Gate = 'open' | 'closed';

/**
 * Waits for the gate of a plant, until the end of the transaction.
 *
 * Row locks need UPDATE, which nobody has on facts; an advisory lock lets a release see every hold, reading and defect
 * that was acknowledged before it, and none that slips in between its look and its word.
 */
export const meetGate = async (tx: EntityManager, plantId: string, gate: Gate): Promise<void> => {
  const lock = gate === 'closed' ? 'pg_advisory_xact_lock' : 'pg_advisory_xact_lock_shared';
  await tx.query(`select ${lock}(hashtextextended($1, 1))`, [plantId]);
};
