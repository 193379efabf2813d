import 'reflect-metadata';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { asService } from '../../apps/service/src/platform/access/call.js';
import { createApp } from '../../apps/service/src/create-app.js';
import { ACTS } from '../../apps/service/src/demo/acts.js';
import { inLanes } from '../../apps/service/src/demo/lanes.js';
import { touchesOf } from '../../apps/service/src/demo/touches-of.js';
import { planDemo } from '../../apps/service/src/demo/plan/plan.js';
import { serviceDataSource } from '../../apps/service/src/platform/database/data-source.js';
import { migrate } from '../../apps/service/src/platform/database/migrate.js';
import { prepareRoles, SERVICE } from '../../apps/service/src/platform/database/roles.js';
import { startEmbedded } from '../../apps/service/src/platform/embedded/index.js';

/**
 * Measures how long the demo plant takes to load, and which acts it spends its time on: `npm run bench:demo`. Machines
 * differ; read how the acts compare.
 */
const dataDir = mkdtempSync(join(tmpdir(), 'hull-record-bench-'));
const server = await startEmbedded({ dataDir, stateDir: dataDir, say: () => undefined });
try {
  const urls = await prepareRoles(server, dataDir);
  await migrate(urls.ownerUrl, SERVICE);
  const db = await serviceDataSource(urls.serviceUrl).initialize();
  const app = await createApp({ db, dataDir, plant: { code: 'DEMO', timeZone: 'America/New_York' }, quiet: true });
  await app.init();
  const planned = performance.now();
  const steps = planDemo();
  const from = performance.now();
  const spent = new Map<string, { ms: number; times: number }>();
  await inLanes(steps, touchesOf, async (step) => {
    const begun = performance.now();
    await asService(() => ACTS[step.act]((useCase) => app.get(useCase, { strict: false }), step)).catch(
      (error: unknown) => {
        throw new Error(step.name, { cause: error });
      },
    );
    const of = spent.get(step.act) ?? { ms: 0, times: 0 };
    spent.set(step.act, { ms: of.ms + performance.now() - begun, times: of.times + 1 });
  });
  const whole = performance.now() - from; // of several at once: what single acts took adds up to more
  console.log(
    `planned in ${((from - planned) / 1000).toFixed(1)} s, ${steps.length} acts in ${(whole / 1000).toFixed(1)} s`,
  );
  for (const [act, { ms, times }] of [...spent].sort((a, b) => b[1].ms - a[1].ms))
    console.log(
      `${act.padEnd(20)} ${String(times).padStart(6)} times ${(ms / times).toFixed(1).padStart(7)} ms each ${((100 * ms) / whole).toFixed(1).padStart(6)} %`,
    );
  await app.close();
  if (db.isInitialized) await db.destroy();
} finally {
  await server.stop();
  rmSync(dataDir, { recursive: true, force: true });
}
