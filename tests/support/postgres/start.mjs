import { register } from 'node:module';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

register('../typescript-hooks.mjs', import.meta.url);

/** Speed over safety: what these databases hold is thrown away. */
const SETTINGS = { fsync: 'off', synchronous_commit: 'off', full_page_writes: 'off', max_connections: '120' };

/** Starts one PostgreSQL for the whole run and migrates the database that every test file gets a clone of. */
export default async function start() {
  if (process.env.TEST_POSTGRES) return; // a run inside a run shares the server of the outer one
  const platform = '../../../apps/service/src/platform';
  const { startEmbedded } = await import(`${platform}/embedded/index.ts`);
  const { prepareRoles } = await import(`${platform}/database/roles.ts`);
  const { migrate } = await import(`${platform}/database/migrate.ts`);
  const dataDir = mkdtempSync(join(tmpdir(), 'hull-record-test-'));
  const stateDir = mkdtempSync(join(tmpdir(), 'hull-record-state-'));
  const server = await startEmbedded({ dataDir, stateDir, settings: SETTINGS, say: () => {} });
  const urls = await prepareRoles(server, dataDir);
  await migrate(urls.ownerUrl, 'hull_record_service');
  process.env.TEST_POSTGRES = JSON.stringify({
    ...urls,
    host: server.host,
    port: server.port,
    superuser: server.superuser,
  });
  globalThis.testPostgres = { server, folders: [dataDir, stateDir] };
}
