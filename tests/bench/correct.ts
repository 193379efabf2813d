import 'reflect-metadata';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { Correct } from '../../apps/service/src/corrections/correct.js';
import { asService } from '../../apps/service/src/platform/access/call.js';
import { createApp } from '../../apps/service/src/create-app.js';
import { ReceiveLot } from '../../apps/service/src/lots/receive-lot.js';
import { AtOnce } from '../../apps/service/src/platform/composition/at-once.js';
import { rebuildDerived } from '../../apps/service/src/platform/composition/rebuild.js';
import { serviceDataSource } from '../../apps/service/src/platform/database/data-source.js';
import { migrate } from '../../apps/service/src/platform/database/migrate.js';
import { prepareRoles, SERVICE } from '../../apps/service/src/platform/database/roles.js';
import { startEmbedded } from '../../apps/service/src/platform/embedded/index.js';
import { fillPlant } from './fill.js';

/**
 * Measures what a correction of the oldest fill of a tank costs the one who makes it, and another who records meanwhile,
 * when everything is worked out before the answer and when a job does it: `npm run bench:correct -- 1000` (hulls).
 * Machines differ; read the ratios.
 */
const hulls = Number(process.argv[2] ?? 1_000);

const timed = async (work: () => Promise<unknown>): Promise<number> => {
  const from = performance.now();
  await work();
  return performance.now() - from;
};
const report = (what: string, value: number, unit = 'ms'): void =>
  console.log(`${what.padEnd(66)} ${value.toFixed(1).padStart(9)} ${unit}`);
const envelope = () => ({
  id: randomUUID(),
  enteredBy: 'ADMIN',
  device: 'DESK',
  happenedAt: new Date(Date.now() - 1_000).toISOString(),
});

const dataDir = mkdtempSync(join(tmpdir(), 'hull-record-bench-'));
const server = await startEmbedded({ dataDir, stateDir: dataDir, say: () => undefined });
try {
  const urls = await prepareRoles(server, dataDir);
  await migrate(urls.ownerUrl, SERVICE);
  const owner = new pg.Client({ ...server.superuser, host: server.host, port: server.port, database: 'hull_record' });
  owner.on('error', () => undefined); // a failure below stops the server under it
  await owner.connect();
  await fillPlant(owner, hulls);
  const head = "md5('ADMIN')::uuid, md5('ADMIN')::uuid, p.id, j.id, now(), now()";
  const columns = 'id, root, plant_id, entry_id, happened_at, recorded_at';
  await owner.query(`
    insert into fact.person (${columns}, badge, name_commitment) select ${head}, 'ADMIN', '' from fact.plant p, fact.journal j;
    insert into fact.device (${columns}, code, description, rated_for_classified_area)
      select ${head}, 'DESK', '', false from fact.plant p, fact.journal j;
    update fact.journal set person_id = md5('ADMIN')::uuid, device_id = md5('ADMIN')::uuid`);
  const db = await serviceDataSource(urls.serviceUrl).initialize();
  const [plant] = await db.query<[{ id: string }]>('select id from fact.plant');
  await rebuildDerived(db, plant.id);
  await owner.query('analyze');

  const idle = async (): Promise<void> => {
    while ((await db.query<unknown[]>('select from work.recomputation where finished_at is null')).length > 0)
      await new Promise((resolve) => setTimeout(resolve, 20));
  };
  const measure = async (atOnce: AtOnce, quantity: string) => {
    const app = await createApp({ db, dataDir, plant: { code: 'BENCH', timeZone: 'UTC' }, quiet: true, atOnce });
    const [input] = await db.query<[{ id: string }]>(
      `select i.id from fact.lot_input i join fact.lot l on l.id = i.lot_id where l.code = 'T1-1'
         and not exists (select from fact.correction c where c.corrects = i.id)`,
    );
    const set = { kind: 'lot input' as const, amount: { quantity, unit: 'kg' as const, basis: 'weighed' as const } };
    let corrected = 0;
    let longest = 0;
    const all = timed(async () => {
      corrected = await timed(() =>
        asService(() =>
          app.get(Correct, { strict: false }).run({ ...envelope(), corrects: input.id, reason: 'as weighed', set }),
        ),
      );
      await idle();
    });
    let done = false;
    void all.finally(() => (done = true));
    const receive = app.get(ReceiveLot, { strict: false });
    while (!done) {
      const lot = { code: randomUUID().slice(0, 13), material: 'glass', supplier: 'S', supplierLot: randomUUID() };
      const amount = { quantity: '1', unit: 'kg' as const, basis: 'weighed' as const };
      const more = { certificate: {}, state: 'released' };
      longest = Math.max(
        longest,
        await timed(() => asService(() => receive.run({ ...envelope(), ...lot, amount, ...more } as never))),
      );
    }
    const whole = await all;
    await app.close();
    return { corrected, whole, longest };
  };

  const before = await measure(new AtOnce(Infinity, Infinity), '3900');
  const job = await measure(new AtOnce(), '3800');
  const [reach] = await db.query<[{ lots: number; places: number }]>(
    'select tank_lots as lots, places from work.recomputation',
  );
  console.log(`${hulls} hulls; the correction reaches ${reach.lots} tank lots and ${reach.places} layers`);
  report('answer of the correction, all worked out before it', before.corrected);
  report('answer of the correction, worked out by a job', job.corrected);
  report('until everything is worked out by the job', job.whole);
  report('longest wait of another who records, all worked out before', before.longest);
  report('longest wait of another who records, by a job', job.longest);
  report('answer: before / by a job', before.corrected / job.corrected, '');
  report('wait of another: before / by a job', before.longest / job.longest, '');
  await db.destroy();
  await owner.end();
} finally {
  await server.stop();
  rmSync(dataDir, { recursive: true, force: true });
}
