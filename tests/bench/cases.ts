import 'reflect-metadata';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import type { DataSource } from 'typeorm';
import { answerApart } from '../../apps/service/src/cases/answer/answer-apart.js';
import { answerOf } from '../../apps/service/src/cases/answer/answer-of.js';
import { compareLots } from '../../apps/service/src/cases/answer/compare-lots.js';
import type { CaseInputs } from '../../apps/service/src/cases/inputs/case-inputs.js';
import { inputsText } from '../../apps/service/src/cases/inputs/inputs-text.js';
import { judgeHulls, type JudgedHulls } from '../../apps/service/src/cases/inputs/judge-hulls.js';
import { loadHulls } from '../../apps/service/src/cases/inputs/load-hulls.js';
import { loadLots } from '../../apps/service/src/cases/inputs/load-lots.js';
import { loadOthers } from '../../apps/service/src/cases/inputs/load-others.js';
import { Room } from '../../apps/service/src/cases/inputs/room.js';
import { leastShareOf, settingsOf, type CaseSettings } from '../../apps/service/src/cases/settings.js';
import { renewExposure } from '../../apps/service/src/platform/exposure/renew-exposure.js';
import { startEmbedded } from '../../apps/service/src/platform/embedded/index.js';
import { serviceDataSource } from '../../apps/service/src/platform/database/data-source.js';
import { readAsOne } from '../../apps/service/src/platform/database/read-as-one.js';
import { renewRoll } from '../../apps/service/src/platform/roll/renew-roll.js';
import { migrate } from '../../apps/service/src/platform/database/migrate.js';
import { prepareRoles, SERVICE } from '../../apps/service/src/platform/database/roles.js';
import { countInDuckDb } from './duckdb-counts.js';
import { fillForCases } from './fill-cases.js';

/**
 * Measures a look at a case over the tables of the service: `SCALE=0.05 npm run bench:cases`; 1 is 200,000 hulls, 2 million
 * lots made, 12 million uses and 400 claims, and wants some 20 GB of disk and half an hour. `KEPT=folder` keeps the filled
 * database there, for the next run. Machines differ; read the ratios.
 */
const scale = Number(process.env['SCALE'] ?? 1);
const size = { hulls: Math.round(200_000 * scale), claims: 400, lotsPerRole: 214 };

const report = (what: string, ms: number, more = ''): void =>
  console.log(`${what.padEnd(64)} ${ms.toFixed(0).padStart(9)} ms ${more}`);

/** Does something and says how long it took, and for how long at most nothing else could be done meanwhile. */
const timed = async <T>(what: string, work: () => Promise<T> | T): Promise<T> => {
  let [last, most] = [performance.now(), 0];
  const tick = (): void => {
    most = Math.max(most, performance.now() - last);
    last = performance.now();
  };
  const ticking = setInterval(tick, 5);
  const from = performance.now();
  const answer = await work();
  const took = performance.now() - from;
  tick();
  clearInterval(ticking);
  report(what, took, `others wait at most ${most.toFixed(0)} ms`);
  return answer;
};

const settings = (): CaseSettings => {
  const claims = 'all';
  const request = {
    ...{ kind: 'blister', models: [], origin: 'left the place of manufacture', strata: ['build quarter', 'model'] },
    ...{ reportLagDays: 0, exposureShare: 0.05, claims, seed: 1, worlds: 999 },
  };
  return settingsOf(request as unknown as Parameters<typeof settingsOf>[0], {
    ...{ cutOff: '2040-06-01', cutOffBecause: 'as named' },
  });
};

/** The plant of the bench goes on beyond any clock. */
const WHEN = { frozenAt: new Date(), frozenOn: '2040-01-01', lookedOn: '2040-06-01' };

/** Of a larger plant, reading every lot from places takes longer than the service lets a question of the database take. */
const WALKED_UP_TO = 0.5;

/** @throws when what is packed tells of other lots */
const compareWithPlaces = async (db: DataSource, inputs: CaseInputs, judged: JudgedHulls): Promise<void> => {
  const walked = await timed('the same lots from places, as long as nothing is packed', () =>
    readAsOne(db, (tx) => loadLots(tx, judged, leastShareOf(settings()), { from: 'places' })),
  );
  if ((await inputsText({ ...inputs, lots: walked })) !== (await inputsText(inputs)))
    throw new Error('Packed lots are others.');
};

type Timed = <T>(what: string, work: () => Promise<T> | T) => Promise<T>;

/** From tables to q. */
const upToQ = async (db: DataSource, step: Timed, room: Room): Promise<{ inputs: CaseInputs; judged: JudgedHulls }> => {
  const frozen = settings();
  const [plant] = await db.query<[{ id: string }]>('select id from fact.plant');
  const judged = await step('hulls and claims, judged', () =>
    readAsOne(db, async (tx) => judgeHulls(await loadHulls(tx, plant.id, frozen), frozen, WHEN)),
  );
  const lots = await step('lots in them', () =>
    readAsOne(db, (tx) => loadLots(tx, judged, leastShareOf(frozen), { room })),
  );
  const { hulls, leftOut, watchedUntil, exploratory } = judged;
  const inputs = {
    ...{ hulls, leftOut, watchedUntil, exploratory, lots },
    others: [],
    spots: [],
    warrantyCapDays: null,
    belowWater: null,
  };
  const quick = { ...frozen, attribution: { ...frozen.attribution, weighed: 0, worlds: 0 } };
  const { attribution } = await step('classes, log-rank and q', () => compareLots(inputs, quick));
  const { tests, untestable } = attribution;
  await step(`${lots.length} candidates, ${tests} tested, ${untestable.length} untestable`, () => undefined);
  return { inputs, judged };
};

const look = async (db: DataSource, how: string, room: Room): Promise<{ inputs: CaseInputs; judged: JudgedHulls }> => {
  const from = performance.now();
  const { inputs, judged } = await upToQ(db, (what, work) => timed(`${how}: ${what}`, work), room);
  report(`${how}: exposure, classes, log-rank and q, end to end`, performance.now() - from);
  const others = await timed(`${how}: other exposures`, () => loadOthers(db.manager, judged));
  return { inputs: { ...inputs, others }, judged };
};

/** One look is soon over, and what else the machine does is in it: of several, the quickest, the middle and the slowest. */
const lookAgain = async (db: DataSource, times: number): Promise<void> => {
  const took: number[] = [];
  for (let i = 0; i < times; i += 1) {
    const from = performance.now();
    const room = new Room();
    await upToQ(db, async (_what, work) => work(), room);
    took.push(performance.now() - from);
    room.leave();
  }
  const [least, middle, most] = [0, (times - 1) / 2, times - 1].map((at) => took.toSorted((a, b) => a - b)[at] ?? NaN);
  report(
    `up to q, the middle of ${times} more looks`,
    middle ?? NaN,
    `from ${least?.toFixed(0)} to ${most?.toFixed(0)} ms`,
  );
};

/** The thread of answers, from its source. */
const THREAD = {
  file: new URL('../../apps/service/src/cases/answer/answer-thread.ts', import.meta.url),
  execArgv: process.execArgv.filter((each) => !each.startsWith('--max')),
};

/** Filling the full size takes longer than measuring it: what a folder is named for is kept there, and filled once. */
const kept = process.env['KEPT'];
const dataDir = kept ?? mkdtempSync(join(tmpdir(), 'hull-record-bench-'));
const filledAs = join(dataDir, 'filled');
if (kept !== undefined && existsSync(filledAs) && Number(readFileSync(filledAs, 'utf8')) !== scale)
  throw new Error(`${kept} is filled with another SCALE: name that, or another folder.`);

const start = () =>
  startEmbedded({ dataDir, stateDir: dataDir, say: () => undefined, settings: { shared_buffers: '512MB' } });
let server = await start();
const asOwner = async (work: (owner: pg.Client) => Promise<void>): Promise<void> => {
  const owner = new pg.Client({ ...server.superuser, host: server.host, port: server.port, database: 'hull_record' });
  owner.on('error', () => undefined); // the server is stopped under it
  await owner.connect();
  await work(owner);
  await owner.end();
};
const startAgain = async (): Promise<DataSource> => {
  await server.stop();
  server = await start();
  const { serviceUrl } = await prepareRoles(server, dataDir);
  return serviceDataSource(serviceUrl).initialize();
};

const fill = async (): Promise<void> => {
  const began = performance.now();
  await asOwner((owner) => fillForCases(owner, size, (what) => report(`  ${what}`, performance.now() - began)));
  const db = await startAgain();
  await timed('hulls rolled, all of them', () => renewRoll(db));
  await timed('exposure packed, all of it', () => renewExposure(db));
  await db.destroy();
  if (kept !== undefined) writeFileSync(filledAs, String(scale));
};

try {
  const { ownerUrl } = await prepareRoles(server, dataDir);
  await migrate(ownerUrl, SERVICE);
  if (!existsSync(filledAs)) await fill();
  const db = await startAgain();
  const first = new Room();
  await look(db, 'cold', first);
  first.leave();
  const { inputs, judged } = await look(db, 'warm', new Room());
  await lookAgain(db, 15);
  if (scale <= WALKED_UP_TO) await compareWithPlaces(db, inputs, judged);
  else console.log(`Lots are not read from places beyond ${WALKED_UP_TO}: the service gives no question that long.`);
  const text = await timed('inputs as canonical JSON', () => inputsText(inputs));
  console.log(`${(text.length / 1e6).toFixed(1)} MB of inputs`);
  await timed('the whole answer, on the thread that others wait for', () => answerOf(settings(), inputs));
  await timed('the same in a thread of its own, as a look does', () =>
    answerApart({ settings: settings(), inputs: text }, undefined, THREAD),
  );
  await db.destroy();
  await asOwner((owner) => countInDuckDb(owner, judged, timed));
} finally {
  await server.stop();
  if (kept === undefined) rmSync(dataDir, { recursive: true, force: true });
}
