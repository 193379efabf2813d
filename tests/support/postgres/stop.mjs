import { rmSync } from 'node:fs';

/** Stops the PostgreSQL of the run and removes all it left. */
export default async function stop() {
  if (!globalThis.testPostgres) return;
  const { server, folders } = globalThis.testPostgres;
  await server.stop();
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
}
