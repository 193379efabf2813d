import type { DataSource, EntityManager } from 'typeorm';

/**
 * Reads with several statements as of one instant.
 *
 * A correction that commits between two of them would else be in one and not in the other: a search could follow the
 * lots as they were to the uses as they are, and find nothing at all.
 *
 * @param read uses this connection alone: another one sees another instant
 */
export const readAsOne = <T>(db: DataSource, read: (tx: EntityManager) => Promise<T>): Promise<T> =>
  db.transaction('REPEATABLE READ', async (tx) => {
    await tx.query('set transaction read only');
    return read(tx);
  });
