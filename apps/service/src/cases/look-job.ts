import type { Fact } from '../platform/facts/fact.js';

/** Name of the job, in the queue of the database. */
export const LOOK = 'look at case';

/** Asks for the job of a look in the transaction of its fact: kept with it, or not at all. One runs at a time. */
export const askForLook = async ({ tx, author }: Fact, lookId: string): Promise<void> => {
  await tx.query(
    "insert into work.case_run (look_id, plant_id, state, done, total) values ($1, $2, 'waiting', 0, $3)",
    [...[lookId, author.plantId, STEPS.length]],
  );
  await tx.query(
    `select graphile_worker.add_job($1, json_build_object('lookId', $2::text), queue_name := $1, job_key := $2, max_attempts := 5)`,
    [LOOK, lookId],
  );
};

/** What a look goes through. */
export const STEPS = [
  'hulls and claims',
  'lots in them',
  'lots compared',
  'other exposures',
  'places',
  'forecast',
] as const;
