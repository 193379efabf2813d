import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { randomUUID } from 'node:crypto';
import { routes, WHO_MAY, type Route, type RouteName } from '@hull-record/contracts';
import { z } from 'zod';
import { countRows, digestInDatabase, readEntries, rowsOfEntry } from '../support/fact-rows.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop, type Answer, type Fields } from '../support/shop.js';
import type { Sample } from '../support/write-sample.js';
import { SAMPLES } from '../support/write-samples.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const TABLE: Readonly<Record<string, Route>> = routes;

const WRITES = Object.entries(TABLE)
  .filter(
    ([, { method, response }]) => method === 'POST' && response instanceof z.ZodObject && 'replayed' in response.shape,
  )
  .map(([name]) => name);

let made = 0;

/** A sample of the route with a body that has never been sent. */
const sampleOf = async (name: string): Promise<Sample & { readonly body: Fields }> => {
  made += 1;
  const make = SAMPLES[name];
  if (!make) throw new Error(`Route ${name} records something: give it a sample in tests/support/write-samples.ts.`);
  const sample = await make(shop, `W${made}`);
  return { ...sample, body: shop.envelope(sample.fields) };
};

const send = (sample: Sample, body: Fields): Promise<Answer> =>
  sample.photo ? shop.postPhoto(sample.path, body, sample.photo) : shop.post(sample.path, body);

const without = (body: Fields, field: string): Fields =>
  Object.fromEntries(Object.entries(body).filter(([name]) => name !== field));

/** Fields of these are named by the plant: figures of a certificate of analysis, skins of a model. */
const NAMED_BY_THE_PLANT = ['/certificate/surplus', '/skins/surplus'];

/** The value with a field more in each of its objects, one at a time, and where that is. */
const withOneMore = (value: unknown, at = ''): readonly (readonly [string, unknown])[] => {
  if (typeof value !== 'object' || value === null) return [];
  const own = Array.isArray(value) ? [] : [[`${at}/surplus`, { ...value, surplus: 1 }] as const];
  const within = Object.entries(value).flatMap(([name, inner]) =>
    withOneMore(inner, `${at}/${name}`).map(
      ([place, more]) =>
        [place, Array.isArray(value) ? value.with(Number(name), more) : { ...value, [name]: more }] as const,
    ),
  );
  return [...own, ...within];
};

describe('the table of writes', () => {
  it('has a sample for every route that answers with a receipt, and for no other', () => {
    expect(Object.keys(SAMPLES).sort()).toEqual([...WRITES].sort());
    expect(WRITES.length).toBeGreaterThan(25);
  });
});

describe.each(WRITES)('the write %s', (name) => {
  it('is recorded once: the same request again gives the same receipt and not one row more', async () => {
    const sample = await sampleOf(name);
    const first = await send(sample, sample.body);
    expect([first.status, first.body]).toEqual([201, expect.objectContaining({ id: sample.body['id'] })]);
    expect(first.body).toMatchObject({ replayed: false });
    expect(TABLE[name]?.response?.safeParse(first.body)).toMatchObject({ success: true });
    const before = await countRows(service);
    const again = await send(sample, sample.body);
    expect([again.status, again.body]).toEqual([200, { ...first.body, replayed: true }]);
    expect(await countRows(service)).toEqual(before);
  });

  it('is refused when its id comes again with another body, and nothing is recorded', async () => {
    const sample = await sampleOf(name);
    expect((await send(sample, sample.body)).status).toBe(201);
    const before = await countRows(service);
    const other = await send(sample, { ...sample.body, ...sample.other });
    expect(other).toMatchObject({ status: 409, body: { type: '/problems/client-id-reused' } });
    expect(other.body).toMatchObject({ errors: [{ pointer: '/id' }] });
    expect(await countRows(service)).toEqual(before);
    const elsewhere = (await sampleOf(name)).path;
    const expected = elsewhere === sample.path ? 200 : 409;
    expect((await send({ ...sample, path: elsewhere }, sample.body)).status).toBe(expected);
  });

  it('is recorded once when ten send it at the same moment', async () => {
    const sample = await sampleOf(name);
    const answers = await Promise.all(Array.from({ length: 10 }, () => send(sample, sample.body)));
    expect(answers.map(({ status }) => status).sort()).toEqual([...Array<number>(9).fill(200), 201]);
    const [receipt] = answers.map(({ body }) => ({ ...body, replayed: null }));
    for (const { body } of answers) expect({ ...body, replayed: null }).toEqual(receipt);
    expect(await readEntries(service, String(sample.body['id']))).toHaveLength(1);
  });

  it('names in its journal entry every row it wrote, with the digest of the row as the database holds it', async () => {
    const sample = await sampleOf(name);
    expect((await send(sample, sample.body)).status).toBe(201);
    const [entry] = await readEntries(service, String(sample.body['id']));
    const names = entry?.rows.map(({ table, id }) => `${table}/${id}`) ?? [];
    expect(names.length).toBeGreaterThan(0);
    expect(entry?.covers).toEqual(names);
    expect([...(await rowsOfEntry(service, String(sample.body['id'])))].sort()).toEqual([...names].sort());
    for (const { table, id, sha256 } of entry?.rows ?? []) {
      expect([table, await digestInDatabase(service, table, id)]).toEqual([table, sha256]);
    }
  });

  it('is refused in the name of another person or device than is there, from the future or without an id, and nothing is recorded', async () => {
    const sample = await sampleOf(name);
    const before = await countRows(service);
    const future = new Date(Date.now() + 3_600_000).toISOString();
    // Somebody unknown is sent by the administrator, who may do what is not for dealers alone.
    const forDealers = String(WHO_MAY[name as RouteName]) === 'dealer';
    const refused: readonly (readonly [Fields, number, string, string | null])[] = [
      forDealers
        ? [{ ...sample.body, enteredBy: 'NOBODY' }, 403, '/problems/not-allowed', null]
        : [{ ...sample.body, enteredBy: 'NOBODY' }, 403, '/problems/entered-by-another', '/enteredBy'],
      [{ ...sample.body, device: 'NOTHING' }, 403, '/problems/entered-elsewhere', '/device'],
      [{ ...sample.body, happenedAt: future }, 400, '/problems/invalid-request', '/happenedAt'],
      [without(sample.body, 'id'), 400, '/problems/invalid-request', '/id'],
    ];
    for (const [body, status, type, pointer] of refused) {
      const answer = await send(sample, body);
      expect([pointer, answer]).toMatchObject([
        pointer,
        { status, body: { type, ...(pointer === null ? {} : { errors: [{ pointer }] }) } },
      ]);
    }
    expect(await countRows(service)).toEqual(before);
    expect((await send(sample, sample.body)).status).toBe(201);
  });

  it('is refused with a field that it does not know, wherever that is, and nothing is recorded', async () => {
    const sample = await sampleOf(name);
    const before = await countRows(service);
    for (const [pointer, body] of withOneMore(sample.body)) {
      if (NAMED_BY_THE_PLANT.includes(pointer)) continue;
      const answer = await send(sample, body as Fields);
      expect([pointer, answer]).toMatchObject([
        pointer,
        { status: 400, body: { type: '/problems/invalid-request', errors: [{ pointer }] } },
      ]);
    }
    expect(await countRows(service)).toEqual(before);
    expect((await send(sample, sample.body)).status).toBe(201);
  });
});

describe('the journal', () => {
  it('holds for every row of every entry the digest of the row as the database holds it', async () => {
    for (const entry of await readEntries(service)) {
      for (const { table, id, sha256 } of entry.rows) {
        expect([table, id, await digestInDatabase(service, table, id)]).toEqual([table, id, sha256]);
      }
    }
  }, 120_000);

  it('knows an id in capitals as the same id, since an id is a number and not a text', async () => {
    const id = randomUUID();
    const body = shop.envelope({ id: id.toUpperCase(), code: 'CAPITALS', name: 'X', place: 'Y' });
    expect((await shop.post('/api/dealers', body)).status).toBe(201);
    expect((await shop.post('/api/dealers', { ...body, id })).status).toBe(200);
    const [entry] = await readEntries(service, id);
    expect(entry?.covers).toEqual([`dealer/${id}`]);
  });

  it.each([
    ['ends its text with a NUL', 'U+0000 \u0000'],
    ['holds half of a surrogate pair', 'half \ud800'],
  ])('refuses a record that %s, which no database keeps, instead of failing', async (_what, name) => {
    const before = await countRows(service);
    const answer = await shop.post('/api/dealers', shop.envelope({ code: 'ODD', name, place: 'Y' }));
    expect(answer).toMatchObject({ status: 400, body: { errors: [{ pointer: '/name' }] } });
    expect(await countRows(service)).toEqual(before);
  });

  it('never holds the name of a person', async () => {
    const name = `Somebody ${randomUUID()}`;
    await shop.act('/api/people', { badge: 'SECRET-1', name, roles: ['quality'] });
    const found = await service.asOwner('select from fact.journal where strpos(entry, $1) > 0', [name]);
    expect(found).toEqual([]);
  });
});
