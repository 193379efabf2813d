import pg from 'pg';
import type { RunningService } from './service.js';

/** Locks of a plant by which writes wait for each other: the gate of releases, and the genealogy. */
const LOCKS = { gate: 1, genealogy: 3 } as const;

const WAITING = `
  select from pg_locks where locktype = 'advisory' and not granted
    and database = (select oid from pg_database where datname = current_database())`;

/** A third who has a lock of the plant alone, so that a test decides who comes after whom. */
export interface HeldLock {
  /** Returns when so many wait for it. */
  waiting(count: number): Promise<void>;
  letGo(): Promise<void>;
}

/** Takes a lock of the plant alone, as one does who takes long. */
export const holdLock = async (service: RunningService, lock: keyof typeof LOCKS): Promise<HeldLock> => {
  const client = new pg.Client({ connectionString: service.clone.ownerUrl });
  await client.connect();
  await client.query(`select pg_advisory_lock(hashtextextended(id::text, ${LOCKS[lock]})) from fact.plant`);
  return {
    waiting: async (count) => {
      while ((await service.asOwner(WAITING)).length < count) await new Promise((resolve) => setTimeout(resolve, 5));
    },
    letGo: () => client.end(),
  };
};
