import { DataSource } from 'typeorm';
import type { Config } from '../config/config.js';
import { startEmbedded } from '../embedded/index.js';
import { checkServicePrivileges, checkServiceRole } from './check-role.js';
import { serviceDataSource } from './data-source.js';
import { migrate } from './migrate.js';
import { prepareRoles, type RoleUrls } from './roles.js';

/** A database that is migrated and open as the service role. */
export interface OpenDatabase {
  readonly db: DataSource;
  /** Where the data of the embedded server are; null on a server of your own. */
  readonly clusterDir: string | null;
  close(): Promise<void>;
}

const roleOf = (url: string): string => decodeURIComponent(new URL(url).username);

/**
 * Opens the database: starts the embedded server unless a server is configured, checks the service role, migrates as the
 * owner, and connects as the service.
 */
export const openDatabase = async (config: Config, say: (line: string) => void): Promise<OpenDatabase> => {
  const server = config.database === 'embedded' ? await startEmbedded({ dataDir: config.dataDir, say }) : undefined;
  try {
    const urls: RoleUrls = server ? await prepareRoles(server, config.dataDir) : (config.database as RoleUrls);
    await checkServiceRole(urls.serviceUrl, roleOf(urls.ownerUrl));
    await migrate(urls.ownerUrl, roleOf(urls.serviceUrl));
    await checkServicePrivileges(urls.serviceUrl);
    const db = await serviceDataSource(urls.serviceUrl).initialize();
    return {
      db,
      clusterDir: server?.clusterDir ?? null,
      close: async () => {
        try {
          await db.destroy();
        } finally {
          await server?.stop();
        }
      },
    };
  } catch (error) {
    await server?.stop();
    throw error;
  }
};
