import type { Fact } from '../facts/fact.js';

/** Name of the job that looks whether certificates print what is on record, in the queue of the database. */
export const AFTER_CORRECTION = 'after correction';

/**
 * Asks for a look at certificates after an entry that corrects something, or changes a HIN: kept with the entry, or not
 * at all. A plant without certificates has nothing to look at.
 */
export const askAfterCorrection = async (fact: Fact): Promise<void> => {
  if (fact.wrote('correction').length + fact.wrote('hull_number').length === 0) return;
  await fact.tx.query(
    `select graphile_worker.add_job($1, json_build_object('entry', $2::text), queue_name := $3, job_key := $2)
     where exists (select from fact.certificate c where c.plant_id = $4)`,
    [AFTER_CORRECTION, fact.id, `${AFTER_CORRECTION} ${fact.author.plantId}`, fact.author.plantId],
  );
};
