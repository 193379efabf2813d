import 'reflect-metadata';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { startEmbedded } from '../../apps/service/src/platform/embedded/index.js';
import { rebuildDerived } from '../../apps/service/src/platform/composition/rebuild.js';
import { serviceDataSource } from '../../apps/service/src/platform/database/data-source.js';
import { migrate } from '../../apps/service/src/platform/database/migrate.js';
import { prepareRoles, SERVICE } from '../../apps/service/src/platform/database/roles.js';
import { HullLots } from '../../apps/service/src/trace/hull-lots.query.js';
import { LotHulls } from '../../apps/service/src/trace/lot-hulls.query.js';
import { SharedLots } from '../../apps/service/src/trace/shared-lots.query.js';
import { fillPlant } from './fill.js';

/**
 * Measures the search on a generated plant: `npm run bench -- 5000` (hulls). Machines differ; read the ratios.
 */
const hulls = Number(process.argv[2] ?? 5_000);
const RUNS = 7;

const timed = async (work: () => Promise<unknown>): Promise<number> => {
  const from = performance.now();
  await work();
  return performance.now() - from;
};

/** Median of some runs after one that warms up, ms. */
const median = async (work: () => Promise<unknown>): Promise<number> => {
  await work();
  const times: number[] = [];
  for (let i = 0; i < RUNS; i += 1) times.push(await timed(work));
  return times.sort((a, b) => a - b)[Math.floor(RUNS / 2)] ?? 0;
};

/** The same question asked without anything kept: the chain is walked with its fractions at question time. */
const WALK = `
  with recursive down(lot, fraction) as (
    select root, 1::float8 from fact.lot where code = $1
    union all
    select i.lot_id, d.fraction * i.kg / (select sum(x.kg) from fact.lot_input x where x.lot_id = i.lot_id)
    from down d join fact.lot_input i on i.input_id = d.lot where d.fraction > 1e-9
  )
  select r.part_id, sum(u.kg * d.fraction) from (select lot, sum(fraction) as fraction from down group by lot) d
  join fact.used u on u.lot_id = d.lot join fact.layer_record r on r.root = u.into_id
  where not exists (select from fact.correction c where c.corrects = u.id) group by r.part_id`;

const report = (what: string, ms: number): void => console.log(`${what.padEnd(58)} ${ms.toFixed(1).padStart(9)} ms`);

const dataDir = mkdtempSync(join(tmpdir(), 'hull-record-bench-'));
const server = await startEmbedded({
  dataDir,
  stateDir: dataDir,
  say: () => undefined,
  settings: { shared_buffers: '512MB' },
});
try {
  const urls = await prepareRoles(server, dataDir);
  await migrate(urls.ownerUrl, SERVICE);
  const owner = new pg.Client({ ...server.superuser, host: server.host, port: server.port, database: 'hull_record' });
  owner.on('error', () => undefined); // a failure below stops the server under it
  await owner.connect();
  report(`facts of ${hulls} hulls, ${hulls * 30} uses`, await timed(() => fillPlant(owner, hulls)));
  const db = await serviceDataSource(urls.serviceUrl).initialize();
  const [plant] = await db.query<[{ id: string }]>('select id from fact.plant');
  report('rebuild of everything derived', await timed(() => rebuildDerived(db, plant.id)));
  await owner.query('analyze');
  const [search, back, shared] = [new LotHulls(db), new HullLots(db), new SharedLots(db)];
  const page = { limit: 100, minShare: 0, belowFloor: 'leave out' as const };
  const lot = `R-${Math.ceil(hulls / 16)}`;
  const kept = await median(() =>
    db.query(
      'select part_id, sum(kg) from derived.place_source where source_id = (select root from fact.lot where code = $1) group by 1',
      [lot],
    ),
  );
  const walked = await median(() => db.query(WALK, [lot]));
  report('kilograms per part of a delivery, kept', kept);
  report('the same, walked at question time', walked);
  console.log(`${'walked / kept'.padEnd(58)} ${(walked / kept).toFixed(1).padStart(9)}`);
  report('lot to hulls, a page of 100 with places and whereabouts', await median(() => search.page(lot, page)));
  report('catalyst lot to hulls, a page of 100', await median(() => search.page('C-5', page)));
  report(
    'tank lot to hulls (walked forward), a page of 100',
    await median(() => search.page(`T1-${Math.ceil(hulls / 16)}`, page)),
  );
  const number = (n: number): string => `B${String(n).padStart(7, '0')}`;
  report('hull to lots, with ways', await median(() => back.run(number(Math.floor(hulls / 2)))));
  const some = Array.from({ length: 40 }, (_, i) => number(Math.floor(hulls / 3) + i));
  report(
    '40 hulls to shared lots, with how many others',
    await median(() => shared.run({ hulls: some, minShare: 0, limit: 100 })),
  );
  const sizes = await db.query<{ table: string; rows: number; mb: number }[]>(
    `select n.nspname || '.' || c.relname as table, c.reltuples::int as rows, round(pg_total_relation_size(c.oid) / 1048576.0)::int as mb
     from pg_class c join pg_namespace n on n.oid = c.relnamespace where n.nspname in ('fact', 'derived') and c.relkind = 'r' order by 3 desc limit 6`,
  );
  for (const { table, rows, mb } of sizes)
    console.log(`${table.padEnd(30)} ${String(rows).padStart(10)} rows ${String(mb).padStart(6)} MB`);
  await db.destroy();
  await owner.end();
} finally {
  await server.stop();
  rmSync(dataDir, { recursive: true, force: true });
}
