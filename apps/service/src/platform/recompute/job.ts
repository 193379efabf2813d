import type { EntityManager } from 'typeorm';

/** Name of the job, in the queue of the database. */
export const RECOMPUTE = 'recompute';

/**
 * Asks for the job of a plant in the transaction of a fact: it is kept with the fact, or not at all.
 *
 * One job of a plant waits at a time, and one runs; one that is asked for while it runs comes after it.
 */
export const askForJob = async (tx: EntityManager, plantId: string): Promise<void> => {
  await tx.query(
    `select from graphile_worker.add_job($1, json_build_object('plantId', $2::text), queue_name := $3, job_key := $3)`,
    [RECOMPUTE, plantId, `${RECOMPUTE} ${plantId}`],
  );
};
