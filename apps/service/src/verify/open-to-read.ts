import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { DataSource } from 'typeorm';
import type { Config } from '../platform/config/config.js';
import { serviceDataSource } from '../platform/database/data-source.js';
import { DATABASE, prepareRoles, SERVICE } from '../platform/database/roles.js';
import { startEmbedded } from '../platform/embedded/index.js';
import { placeOfCluster } from '../platform/embedded/cluster-place.js';
import { readPostmasterFile } from '../platform/embedded/postmaster-file.js';

/** A database that is open to be read. */
interface OpenToRead {
  readonly db: DataSource;
  close(): Promise<void>;
}

/** Opens the database of the configuration as the service role, whether or not the service runs; it migrates nothing. */
export const openToRead = async (config: Config, say: (line: string) => void): Promise<OpenToRead> => {
  if (config.database !== 'embedded') return open(config.database.serviceUrl);
  const running = readPostmasterFile(placeOfCluster(config.dataDir));
  if (running?.ready && isAlive(running.pid)) {
    const roles = JSON.parse(readFileSync(join(config.dataDir, 'postgres-roles.json'), 'utf8')) as Record<
      string,
      string
    >;
    return open(`postgresql://${SERVICE}:${roles[SERVICE] ?? ''}@127.0.0.1:${running.port}/${DATABASE}`);
  }
  const server = await startEmbedded({ dataDir: config.dataDir, say });
  const { serviceUrl } = await prepareRoles(server, config.dataDir);
  const { db, close } = await open(serviceUrl);
  return { db, close: () => close().then(() => server.stop()) };
};

const open = async (url: string): Promise<OpenToRead> => {
  const db = await serviceDataSource(url, 2).initialize();
  return { db, close: () => db.destroy() };
};

const isAlive = (pid: number): boolean => {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    // It is there, and belongs to another user.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
};
