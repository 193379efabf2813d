import { mkdtemp, rm } from 'node:fs/promises';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import type { DataSource } from 'typeorm';
import { createApp, type ToCreate } from '../../apps/service/src/create-app.js';
import { serviceDataSource } from '../../apps/service/src/platform/database/data-source.js';
import { giveEveryJob, type Headers, sessionsOf } from './sessions.js';
import { cloneDatabase, type Clone } from './clone.js';

/** The service, running on a database of its own. */
export interface RunningService {
  readonly url: string;
  readonly server: Server;
  readonly db: DataSource;
  readonly clone: Clone;
  readonly dataDir: string;
  get: <T>(token: abstract new (...args: never[]) => T) => T;
  /** Asks the database as its owner. */
  asOwner<R extends pg.QueryResultRow>(sql: string, parameters?: readonly unknown[]): Promise<R[]>;
  /** Headers of a browser in which somebody is signed in, at a device: a session as a sign-in begins one. */
  signedIn(badge?: string, device?: string): Promise<Headers>;
  close(): Promise<void>;
}

/**
 * What a test may ask for: `webDir` is the folder of the web app, to serve its page too; `atOnce` is how much a correction
 * works out before it answers.
 */
export type ToStart = Pick<ToCreate, 'webDir' | 'atOnce' | 'access' | 'trustedProxy'> & {
  /** As the plant is opened, ADMIN is an administrator alone; else, as in a small shop, ADMIN has every job. */
  readonly roles?: 'as opened';
};

/** Starts the service in this process on a clone of the migrated database, listening on a free loopback port. */
export const startService = async ({ roles, ...asked }: ToStart = {}): Promise<RunningService> => {
  const clone = await cloneDatabase();
  const dataDir = await mkdtemp(join(tmpdir(), 'hull-record-files-'));
  const db = await serviceDataSource(clone.serviceUrl, 12).initialize();
  const plant = { code: 'TARROW', timeZone: 'America/New_York' };
  const app = await createApp({ db, dataDir, plant, quiet: true, ...asked });
  if (roles === undefined) await giveEveryJob((token) => app.get(token, { strict: false }));
  await app.listen(0, '127.0.0.1');
  const owner = new pg.Pool({ connectionString: clone.ownerUrl, max: 2, options: '-c timezone=UTC' });
  // A search that is cut short asks on for a moment: what it asks ends with the database.
  owner.on('error', () => undefined);
  return {
    url: await app.getUrl(),
    server: app.getHttpServer() as Server,
    db,
    clone,
    dataDir,
    get: (token) => app.get(token),
    asOwner: async <R extends pg.QueryResultRow>(sql: string, parameters: readonly unknown[] = []) =>
      (await owner.query<R>(sql, [...parameters])).rows,
    signedIn: sessionsOf(db),
    close: async () => {
      await app.close();
      await db.destroy();
      await owner.end();
      await clone.drop();
      await rm(dataDir, { recursive: true, force: true });
    },
  };
};
