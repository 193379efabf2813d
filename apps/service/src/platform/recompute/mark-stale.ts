import type { Reach } from '../composition/reach-of-corrections.js';
import type { Fact } from '../facts/fact.js';
import { standingPlaces } from '../places/places.js';
import { askForJob } from './job.js';

const KEEP = `
  insert into work.recomputation (id, plant_id, asked_at, tank_lots, places) values ($1, $2, $3, $4, $5)`;

const KEEP_LOTS = `
  insert into work.stale_lot (recomputation_id, lot_id, tank, done)
  select $1, lot.id, lot.id = any($3), false from unnest($2::uuid[]) lot(id)`;

/** A place is marked for the part that it is of, and for the part that it was of until now. */
const KEEP_PLACES = `
  insert into work.stale_place (recomputation_id, place_id, part_id, done)
  select $1, of.place_id, of.part_id, false from (
    select place_id, part_id from (${standingPlaces('p.root = any($2)')}) now
    union select s.place_id, s.part_id from derived.place_source s where s.place_id = any($2)) of`;

/** Marks everything that a correction reaches as out of date, and asks for the job that works it out anew. */
export const markStale = async (fact: Fact, { lots, tankLots, places }: Reach): Promise<void> => {
  const { tx, id, author, recordedAt } = fact;
  await tx.query(KEEP, [id, author.plantId, recordedAt, tankLots.length, places.length]);
  await tx.query(KEEP_LOTS, [id, lots, tankLots]);
  await tx.query(KEEP_PLACES, [id, places]);
  await askForJob(tx, author.plantId);
};
