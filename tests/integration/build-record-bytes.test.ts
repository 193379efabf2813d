import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { noisy } from '../support/photos.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
import { recordWhole } from '../support/whole-record.js';

let service: RunningService;
let here: string;
beforeAll(async () => {
  service = await startService();
  const shop = await new Shop(service).open();
  await recordWhole(shop);
  const found = await shop.defect('86-1-H');
  const photo = await noisy(1_200, 900).webp().toBuffer();
  await shop.postPhoto(`/api/defects/${found}/photos`, shop.envelope(), photo);
  const answer = await fetch(`${service.url}/api/hulls/86-1/build-record.pdf`, { headers: await service.signedIn() });
  here = sha256(new Uint8Array(await answer.arrayBuffer()));
}, 60_000);
afterAll(() => service.close());

const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

interface Elsewhere {
  readonly sha256: string;
  readonly year: number;
  readonly timeZone: string;
}

/** Draws the record in a process of its own. */
const drawElsewhere = async (env: Readonly<Record<string, string>>): Promise<Elsewhere> => {
  const preloads = ['--import', './tests/support/shift-clock.mjs', '--import', './tests/support/load-typescript.mjs'];
  const photos = join(service.dataDir, 'photos');
  const script = ['tests/support/draw-record.ts', service.clone.serviceUrl, '86-1', photos];
  const { stdout } = await promisify(execFile)(process.execPath, ['--conditions=source', ...preloads, ...script], {
    env: { PATH: process.env['PATH'] ?? '', ...env },
  });
  return JSON.parse(stdout) as Elsewhere;
};

const FACTS = `
  select c.relname as table, a.attname is not null as dated from pg_class c
  join pg_attribute i on i.attrelid = c.oid and i.attname = 'id'
  left join pg_attribute a on a.attrelid = c.oid and a.attname = 'recorded_at'
  where c.relnamespace = 'fact'::regnamespace and c.relkind = 'r'`;

/** Rewrites every table of facts so that the newest rows lie first, and the planner knows other numbers of them. */
const rewriteInAnotherOrder = async (): Promise<void> => {
  for (const { table, dated } of await service.asOwner<{ table: string; dated: boolean }>(FACTS)) {
    const order = dated ? 'recorded_at desc, (md5(id::text))' : '(md5(id::text))';
    await service.asOwner(`create index other_order on fact.${table} (${order})`);
    await service.asOwner(`cluster fact.${table} using other_order`);
    await service.asOwner('drop index fact.other_order');
    await service.asOwner(`analyze fact.${table}`);
  }
};

const orderOf = async (table: string): Promise<readonly string[]> =>
  (await service.asOwner<{ id: string }>(`select id from fact.${table} order by ctid`)).map(({ id }) => id);

describe('The same facts give the same bytes', () => {
  it('drawn twice by one process', async () => {
    const answer = await fetch(`${service.url}/api/hulls/86-1/build-record.pdf`, { headers: await service.signedIn() });
    expect(sha256(new Uint8Array(await answer.arrayBuffer()))).toBe(here);
  });

  it('in another process, eleven years later and half the world away', async () => {
    const elsewhere = await drawElsewhere({ TZ: 'Pacific/Auckland', LANG: 'de_DE.UTF-8', CLOCK_AHEAD_YEARS: '11' });
    expect(elsewhere.year).toBeGreaterThan(new Date().getFullYear() + 9);
    expect(elsewhere.timeZone).toBe('Pacific/Auckland');
    expect(elsewhere.sha256).toBe(here);
  }, 60_000);

  it('from a database whose rows lie in another order', async () => {
    const before = await Promise.all(['layer_record', 'used', 'lot_input', 'journal'].map(orderOf));
    await rewriteInAnotherOrder();
    const after = await Promise.all(['layer_record', 'used', 'lot_input', 'journal'].map(orderOf));
    for (const [i, ids] of before.entries()) {
      expect(after[i]).not.toEqual(ids);
      expect([...(after[i] ?? [])].sort()).toEqual([...ids].sort());
    }
    const elsewhere = await drawElsewhere({ TZ: 'America/Anchorage', LC_ALL: 'C', CLOCK_AHEAD_YEARS: '-3' });
    expect(elsewhere.sha256).toBe(here);
  }, 60_000);
});
