import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { readHead, type SignedTreeHead } from '@hull-record/evidence';
import { join } from 'node:path';
import { DataSource, type EntityManager } from 'typeorm';
import { serviceDataSource } from '../../apps/service/src/platform/database/data-source.js';
import { KeyRing } from '../../apps/service/src/platform/journal/key-ring.js';
import { SignHead } from '../../apps/service/src/platform/journal/sign-head.js';
import { type ToVerify, type Verified, verifyDatabase } from '../../apps/service/src/verify/verify-database.js';
import { wordsOf } from '../../apps/service/src/verify/words.js';
import { sealEverything } from '../support/seal-everything.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
import { type FactTable, filledTables, otherValue, tampering } from '../support/tampering.js';
import { recordWhole } from '../support/whole-record.js';

let service: RunningService;
let superuser: DataSource;
let tables: readonly FactTable[];
let asked: ToVerify;
let head: SignedTreeHead;
beforeAll(async () => {
  service = await startService();
  const shop = await new Shop(service).open();
  await recordWhole(shop);
  await shop.receipt('/api/hulls/86-1/owners', {
    what: 'first purchaser',
    owner: { name: 'Invented Owner', address: 'Somewhere 1' },
  });
  await sealEverything(service);
  await service.get(SignHead).all();
  const [row] = await service.asOwner<{ line: string }>('select line from fact.tree_head');
  head = readHead(row?.line ?? '');
  const ring = new KeyRing(join(service.dataDir, 'keys'));
  asked = { keys: new Set(ring.all().map(({ keyId }) => keyId)), held: [] };
  superuser = await serviceDataSource(service.clone.superuserUrl, 2).initialize();
  tables = await filledTables(superuser.manager);
}, 120_000);
afterAll(async () => {
  await superuser.destroy();
  await service.close();
});

const HEADERLESS = ['client_id', 'journal', 'plant', 'sealed_entry', 'sealed_subtree', 'tree_head'];

/** Does something as somebody whom no right and no key stops, looks, and undoes it. */
const after = (sql: readonly string[], more: Partial<ToVerify> = {}): Promise<Verified> =>
  withPower((tx) => tampering(tx, sql, () => verifyDatabase(tx, { ...asked, ...more })));

const withPower = async <T>(work: (tx: EntityManager) => Promise<T>): Promise<T> => {
  const runner = superuser.createQueryRunner();
  await runner.startTransaction();
  try {
    await runner.query('set local session_replication_role = replica');
    return await work(runner.manager);
  } finally {
    await runner.rollbackTransaction();
    await runner.release();
  }
};

const namesOf = ({ faults }: Verified): string[] => faults.map(({ what, table }) => `${what} ${table}`);

/** The first row of a table by all it holds. */
const FIRST = (name: string): string => `ctid = (select ctid from fact.${name} t order by t::text limit 1)`;

/** What is known of an entry in other tables may be named before the table that was changed. */
const expectNamed = (found: Verified, ...any: readonly string[]): void =>
  expect([namesOf(found), any.some((name) => namesOf(found).includes(name))]).toEqual([expect.anything(), true]);

describe('a look over the whole database', () => {
  it('finds nothing in one that was left alone, and says what it proves and what not', async () => {
    const found = await after([]);
    expect(found.faults).toEqual([]);
    expect(found.plants).toEqual([{ plant: 'TARROW', sealed: head.size, unsealed: 0 }]);
    expect(tables.length).toBeGreaterThan(35);
    expect(wordsOf(found).join(' ')).toMatch(/could have made all of it anew.* Not protected: entries not sealed yet/);
    const words = wordsOf(await after([], { held: [head] })).join(' ');
    expect(words).toContain(`Unchanged since a head that somebody else holds: the first ${head.size} entries`);
  });

  it('names every table of facts in which one value was changed', async () => {
    for (const { name, columns } of tables.filter((table) => !HEADERLESS.includes(table.name))) {
      for (const column of [columns.find((each) => each.name === 'happened_at'), columns.at(-1)]) {
        if (!column) throw new Error(`${name} has no columns.`);
        const change = `update fact.${name} set ${column.name} = ${otherValue(column)} where ${FIRST(name)}`;
        const found = await after([`set constraints all deferred`, ...(await dropChecks(name)), change]);
        expectNamed(found, `changed fact.${name}`);
      }
    }
  }, 300_000);

  it('names every table of facts from which a row was removed, or to which one was added', async () => {
    for (const { name, columns } of tables.filter((table) => !HEADERLESS.includes(table.name))) {
      expectNamed(await after([`delete from fact.${name} where ${FIRST(name)}`]), `removed fact.${name}`);
      const all = columns.map((column) => (column.name === 'id' ? 'gen_random_uuid()' : column.name)).join(', ');
      const add = `insert into fact.${name} select ${all} from fact.${name} where ${FIRST(name)}`;
      expectNamed(await after([...(await dropUniques(name)), add]), `added fact.${name}`);
    }
  }, 300_000);
});

/** The statements that take what stands in the way of tampering with a table: its owner may do that. */
const dropped = async (table: string, kinds: string): Promise<string[]> => {
  const rows = await service.asOwner<{ sql: string }>(
    `select format('alter table fact.%I drop constraint %I cascade', '${table}', conname) as sql from pg_constraint
     where conrelid = 'fact.${table}'::regclass and contype in (${kinds})`,
  );
  return rows.map(({ sql }) => sql);
};
const dropChecks = (table: string): Promise<string[]> => dropped(table, "'c', 'u', 'x'");
const dropUniques = async (table: string): Promise<string[]> => [
  ...(await dropped(table, "'u', 'x'")),
  ...(
    await service.asOwner<{ sql: string }>(
      `select format('drop index fact.%I', c.relname) as sql from pg_index i join pg_class c on c.oid = i.indexrelid
       where i.indrelid = 'fact.${table}'::regclass and i.indisunique and not exists (select from pg_constraint k where k.conindid = c.oid)`,
    )
  ).map(({ sql }) => sql),
];

describe('what holds the facts', () => {
  it.each([
    [
      'a change of an entry',
      `update fact.journal set entry = replace(entry, 'VOID', 'void') || ' ' where ${FIRST('journal')}`,
      'changed fact.journal',
    ],
    [
      'a column of an entry',
      `update fact.journal set recorded_at = recorded_at + interval '1 s' where ${FIRST('journal')}`,
      'changed fact.journal',
    ],
    [
      'what an entry covers',
      `update fact.journal set covers = covers || '{dealer/x}' where ${FIRST('journal')}`,
      'changed fact.journal',
    ],
    [
      'the order of entering',
      `update fact.journal set position = default where ${FIRST('journal')}`,
      'reordered fact.journal',
    ],
    ['an entry taken out', `delete from fact.journal where ${FIRST('journal')}`, 'removed fact.journal'],
    ['a client id taken out', `delete from fact.client_id where ${FIRST('client_id')}`, 'removed fact.client_id'],
    [
      'a client id with another digest',
      `update fact.client_id set digest = 'x' where ${FIRST('client_id')}`,
      'changed fact.client_id',
    ],
    ['a client id put in', `insert into fact.client_id values (gen_random_uuid(), 'x')`, 'added fact.client_id'],
    ['the time zone of a plant', `update fact.plant set time_zone = 'UTC'`, 'changed fact.plant'],
    ['a plant put in', `insert into fact.plant values (gen_random_uuid(), 'X', 'UTC')`, 'added fact.plant'],
    ['a place taken out', `delete from fact.sealed_entry where index = 3`, 'removed fact.sealed_entry'],
    [
      'two places swapped',
      `update fact.sealed_entry set index = case index when 3 then 1000004 else 1000003 end where index in (3, 4);
       update fact.sealed_entry set index = index - 1000000 where index > 1000000`,
      'changed fact.journal',
    ],
    [
      'a subtree changed',
      `update fact.sealed_subtree set hash = decode(repeat('00', 32), 'hex') where level = 1 and index = 0`,
      'changed fact.sealed_subtree',
    ],
    [
      'a subtree taken out',
      `delete from fact.sealed_subtree where level = 1 and index = 0`,
      'removed fact.sealed_subtree',
    ],
    [
      'a subtree put in',
      `insert into fact.sealed_subtree select plant_id, 40, 0, hash from fact.sealed_subtree limit 1`,
      'added fact.sealed_subtree',
    ],
    [
      'a head changed',
      `update fact.tree_head set line = replace(line, '"size":', '"size":1')`,
      'changed fact.tree_head',
    ],
    [
      'the date of a head',
      `update fact.tree_head set signed_at = signed_at + interval '1 s'`,
      'changed fact.tree_head',
    ],
    [
      'a name of a person',
      `update work.person_detail set name = 'Somebody Else' where person_id = (select min(person_id::text)::uuid from work.person_detail)`,
      'changed work.person_detail',
    ],
    ['an owner', `update work.owner_detail set detail = '{"name":"Somebody Else"}'`, 'changed work.owner_detail'],
  ])('is named: %s', async (_what, sql, named) => {
    expectNamed(await after(sql.split(';\n')), named);
  });

  it('is named when an entry and its digests were all made to fit, by the head that was signed before', async () => {
    const sql = [
      `delete from fact.sealed_entry where index = (select max(index) from fact.sealed_entry)`,
      `delete from fact.sealed_subtree where not exists (select from fact.sealed_entry e where e.index = (sealed_subtree.index + 1) * 2 ^ level - 1)`,
    ];
    expectNamed(await after(sql), 'changed fact.journal');
    const all = [...sql, 'delete from fact.tree_head'];
    expectNamed(await after(all, { held: [head] }), 'removed the journal');
  });

  it('is named when it was put in under a transaction of long ago', async () => {
    const sql = `insert into fact.journal (id, plant_id, transaction, format, kind, person_id, device_id, identity, happened_at, recorded_at, covers, entry)
      select gen_random_uuid(), plant_id, '3', format, kind, person_id, device_id, identity, happened_at, recorded_at, covers, entry from fact.journal limit 1`;
    expectNamed(await after([sql]), 'added fact.journal');
  });
});
