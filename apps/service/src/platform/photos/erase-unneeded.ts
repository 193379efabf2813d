import type { EntityManager } from 'typeorm';
import type { Receipt } from '../facts/record-fact.js';

/** Name of the job that erases files of a photo, in the queue of the database. */
export const ERASE_PHOTO_FILES = 'erase photo files';

/** Asks for the files of a photo to be erased that no photo needs any more: kept with the act, or not at all. */
export const askToErase = async (tx: EntityManager, photo: string): Promise<void> => {
  await tx.query(`select graphile_worker.add_job($1, json_build_object('photo', $2::text), queue_name := $1)`, [
    ERASE_PHOTO_FILES,
    photo,
  ]);
};

/**
 * Looks again at the files of a photo that came a second time: they were kept before anybody knew that it is redacted.
 *
 * @returns the receipt, as it is
 */
export const notKeptAgain = async <R>(tx: EntityManager, receipt: Receipt<R>): Promise<Receipt<R>> => {
  if (receipt.replayed) await askToErase(tx, receipt.id);
  return receipt;
};
