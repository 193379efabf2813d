import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { inclusionProof, inclusionReads, leafHash, rootOf, verifyInclusion } from '@hull-record/evidence';
import { randomUUID } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import { createApp } from '../../apps/service/src/create-app.js';
import { readSubtrees } from '../../apps/service/src/platform/journal/read-subtrees.js';
import { SealJournal, sealedTree } from '../../apps/service/src/platform/journal/seal-journal.js';
import { mth } from '../support/rfc-tree.js';
import { countUnsealed, sealEverything } from '../support/seal-everything.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let plantId: string;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  plantId = (await service.asOwner<{ id: string }>('select id from fact.plant'))[0]?.id ?? '';
});
afterAll(() => service.close());

interface Sealed {
  readonly id: string;
  readonly entry: string;
}

const sealed = (): Promise<Sealed[]> =>
  service.asOwner(
    'select j.id, j.entry from fact.sealed_entry s join fact.journal j on j.id = s.entry_id order by s.index',
  );

const INSERT = `
  insert into fact.journal (id, plant_id, format, kind, person_id, device_id, identity, happened_at, recorded_at, covers, entry)
  select $1, plant_id, 1, 'test', person_id, device_id, 'stated', now(), now(), '{}', $2 from fact.journal limit 1`;

interface Written {
  readonly id: string;
  readonly began: number;
  readonly ended: number;
}

/** Writes an entry in a transaction that commits so many milliseconds after it wrote. */
const write = async (client: pg.PoolClient, delayMs: number): Promise<Written> => {
  const id = randomUUID();
  const began = performance.now();
  await client.query('begin');
  await client.query("insert into fact.client_id (id, digest) values ($1, 'x')", [id]);
  await client.query(INSERT, [id, `{"id":"${id}"}`]);
  await pause(delayMs);
  await client.query('commit');
  return { id, began, ended: performance.now() };
};

describe('the sealed journal', () => {
  it('is a tree whose root is that of all entries, and whose stored subtrees prove each of them', async () => {
    await shop.act('/api/dealers', { code: 'D-1', name: 'Invented Dealer', place: 'Somewhere' });
    await sealEverything(service);
    const entries = await sealed();
    expect(entries.length).toBeGreaterThan(10);
    const leaves = entries.map(({ entry }) => leafHash(entry));
    const tree = await sealedTree(service.db.manager, plantId);
    const root = rootOf(tree);
    const all = entries.map(({ entry }) => Buffer.from(entry));
    expect(Buffer.from(root).toString('hex')).toBe(mth(all).toString('hex'));
    for (const [index, leaf] of leaves.entries()) {
      const read = await readSubtrees(service.db.manager, plantId, inclusionReads(index, tree.size));
      const proof = inclusionProof(index, tree.size, read);
      expect(verifyInclusion({ index, size: tree.size, leaf, proof, root })).toBe(true);
    }
  });

  it('loses no entry of writers that commit late, and puts none before one that had committed when it began', async () => {
    const pool = new pg.Pool({ connectionString: service.clone.serviceUrl, max: 9 });
    const before = (await sealed()).length;
    let writing = true;
    const sealer = (async () => {
      for (; writing; await pause(5)) await service.get(SealJournal).of(plantId);
    })();
    const slow = pool.connect().then((client) => write(client, 1_500).finally(() => client.release()));
    const writers = Array.from({ length: 7 }, async (_, who) => {
      const client = await pool.connect();
      const written: Written[] = [];
      for (let i = 0; i < 25; i += 1) written.push(await write(client, ((who * 31 + i * 17) % 9) * 10));
      client.release();
      return written;
    });
    const written = [await slow, ...(await Promise.all(writers)).flat()];
    writing = false;
    await sealer;
    await pool.end();
    await sealEverything(service);
    const order = new Map((await sealed()).map(({ id }, index) => [id, index]));
    expect(order.size).toBe(before + written.length);
    const placeOf = ({ id }: Written): number => order.get(id) ?? -1;
    const swapped = written.flatMap((one) =>
      written.filter((other) => one.ended < other.began && placeOf(one) > placeOf(other)),
    );
    expect(written.every((one) => placeOf(one) >= before)).toBe(true);
    expect(swapped).toEqual([]);
  }, 60_000);

  it('is sealed as it came after a restore to another server, whose transactions count anew, before anybody writes', async () => {
    await sealEverything(service);
    await shop.act('/api/dealers', { code: 'D-2', name: 'Another Invented Dealer', place: 'Somewhere' });
    const left = await countUnsealed(service);
    expect(left).toBeGreaterThan(0);
    await service.asOwner(`update fact.journal j set transaction = '99999999999999'
      where not exists (select from fact.sealed_entry s where s.entry_id = j.id)`);
    expect(await service.get(SealJournal).all()).toBe(0);
    await service.asOwner("update work.seal_state set server = '1', sealed_below = '99999999999998'");
    const plant = { code: 'TARROW', timeZone: 'America/New_York' };
    const app = await createApp({ db: service.db, dataDir: service.dataDir, plant, quiet: true });
    await app.close();
    expect(await countUnsealed(service)).toBe(0);
    await shop.act('/api/dealers', { code: 'D-3', name: 'A Third Invented Dealer', place: 'Somewhere' });
    await sealEverything(service);
    expect(await countUnsealed(service)).toBe(0);
  }, 60_000);
});
