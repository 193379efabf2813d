import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Cast } from '../support/access/cast.js';
import type { Client, Reply } from '../support/access/client.js';
import { openShop } from '../support/access/opened.js';
import { routesOf } from '../support/access/routes-of.js';
import { statementsOf } from '../support/access/statements.js';
import { type RunningService, startService } from '../support/service.js';

let service: RunningService;
let cast: Cast;
let ours: Client;
let theirs: Client;

/** Two dealers with a hull each, a hull that went from the one to the other, and one that is with nobody. */
beforeAll(async () => {
  service = await startService({ roles: 'as opened' });
  cast = await Cast.gather(service);
  await openShop(cast);
  await cast.recorded('administrator', '/api/dealers', { code: 'SAL', name: 'Saltmere Boats', place: 'Saltmere' });
  await cast.register('DEA-8', 'dealer', { dealer: 'SAL' });
  ours = cast.as('dealer');
  theirs = await cast.arrive('DEA-8');
  for (const [number, serial, dealers] of [
    ['OURS-1', '00001', ['NLM']],
    ['THEIRS-1', '00002', ['SAL']],
    ['WENT-1', '00003', ['NLM', 'SAL']],
    ['NOBODY-1', '00004', []],
  ] as const) {
    await cast.recorded('laminator', '/api/hulls', { number, model: 'TS86', mold: 'M-86-1' });
    await cast.recorded('quality', `/api/hulls/${number}/hins`, { hin: `TRZ${serial}A626` });
    for (const dealer of dealers)
      await cast.recorded('warranty', `/api/hulls/${number}/life`, { what: 'at dealer', dealer });
  }
}, 60_000);
afterAll(() => service.close());

interface Seen {
  readonly reply: unknown;
  readonly statements: number;
}

/** What somebody sees of an answer, with the number that was asked for left out. */
const seen = async (client: Client, path: string, number: string, method = 'GET'): Promise<Seen> => {
  const { result, sql } = await statementsOf<Reply>(service.db, () =>
    method === 'GET' ? client.get(path) : client.post(path, {}),
  );
  const { status, body, headers } = result;
  const { date: _date, etag: _etag, 'content-length': _length, ...rest } = headers;
  const told = JSON.stringify({ status, body, rest }).replaceAll(number, 'N');
  return { reply: JSON.parse(told) as unknown, statements: sql.length };
};

const OWN = ['/api/own-hulls/:number', '/api/own-hulls/:number/build-record.pdf'];
const NOT_THERE = 'NO-SUCH-1';

describe('a hull of another dealer', () => {
  it.each(
    OWN.flatMap((path) =>
      ['THEIRS-1', 'WENT-1', 'NOBODY-1', 'TRZ00002A626', 'trz-00002-a6-26', 'theirs-1'].map((number) => [path, number]),
    ),
  )('%s of %s is answered as one that is not there, by as many statements', async (path, number) => {
    const there = await seen(ours, path.replace(':number', number), number);
    const nowhere = await seen(ours, path.replace(':number', NOT_THERE), NOT_THERE);
    expect(there).toEqual(nowhere);
    expect(there).toMatchObject({ reply: { status: 404, body: { detail: 'There is no hull N.' } } });
    expect(there.statements).toBeGreaterThan(1);
  });

  it('is not there at an earlier state either, when it was with the one who asks', async () => {
    const asOf = new Date().toISOString();
    const path = (number: string): string => `/api/own-hulls/${number}/build-record.pdf?asOf=${asOf}`;
    expect(await seen(ours, path('WENT-1'), 'WENT-1')).toEqual(await seen(ours, path(NOT_THERE), NOT_THERE));
  });

  it('differs from the own hull in the count of statements, so that the count would show a difference', async () => {
    const own = await seen(ours, '/api/own-hulls/OURS-1/build-record.pdf', 'OURS-1');
    const other = await seen(ours, '/api/own-hulls/THEIRS-1/build-record.pdf', 'THEIRS-1');
    expect(own.statements).toBeGreaterThan(other.statements);
  });
});

describe('every route that has an id in its path', () => {
  it('tells a dealer nothing of what is there: the same answer as for what is not, by as many statements', async () => {
    const [hull] = await service.asOwner<{ id: string }>(
      "select hull_id as id from fact.hull_number where normalised = 'THEIRS1'",
    );
    const real: Readonly<Record<string, string>> = {
      ...{ number: 'THEIRS-1', part: 'THEIRS-1-H', material: 'RES-VE', mold: 'M-86-1', model: 'TS86', badge: 'DEA-8' },
      ...{ device: 'DESK', code: 'MG-1', equipment: 'MG-1', fact: String(hull?.id) },
    };
    const routes = routesOf(service.server).filter(({ path }) => path.includes(':'));
    let compared = 0;
    for (const { method, path } of routes) {
      const filled = path.replace(/:(\w+)/g, (_, name: string) => real[name] ?? NOT_THERE);
      const absent = path.replace(/:\w+/g, NOT_THERE);
      const name = filled === absent ? NOT_THERE : (Object.values(real).find((id) => filled.includes(id)) as string);
      expect([path, await seen(ours, filled, name, method)]).toEqual([
        path,
        await seen(ours, absent, NOT_THERE, method),
      ]);
      if (filled !== absent) compared += 1;
    }
    expect(compared).toBeGreaterThan(30);
  });
});

describe('what a dealer lists', () => {
  const numbers = async (client: Client, query = ''): Promise<unknown> =>
    ((await client.get(`/api/own-hulls${query}`)).body['items'] as unknown as { number: string }[]).map(
      ({ number }) => number,
    );

  it('are the own hulls, and no others; one that went on is with its new dealer', async () => {
    expect(await numbers(ours)).toEqual(['OURS-1']);
    expect(await numbers(theirs)).toEqual(['WENT-1', 'THEIRS-1']);
  });

  it('stays so with a cursor that the other dealer was given', async () => {
    const { body } = await theirs.get('/api/own-hulls?limit=1');
    expect(await numbers(theirs, `?cursor=${String(body['next'])}`)).toEqual(['THEIRS-1']);
    expect(await numbers(ours, `?cursor=${String(body['next'])}`)).toEqual(['OURS-1']);
  });

  it('tells nothing of others by fields that a caller makes up', async () => {
    for (const [query, field] of [
      ['?dealer=SAL', '/dealer'],
      ['?dealerId=1', '/dealerId'],
      ['?number=THEIRS-1', '/number'],
      ['?limit=500&dealer[]=SAL', '/dealer[]'],
    ]) {
      const { status, body } = await ours.get(`/api/own-hulls${query}`);
      expect([status, body]).toEqual([400, expect.objectContaining({ errors: [expect.anything()] })]);
      expect(body).toMatchObject({ errors: [{ pointer: field }] });
      expect(JSON.stringify(body)).not.toContain('THEIRS');
    }
    expect(await numbers(ours, '?limit=500')).toEqual(['OURS-1']);
  });

  it('has no names of crews, lots or nonconformities in an own hull', async () => {
    const { body } = await ours.get('/api/own-hulls/OURS-1');
    expect(Object.keys(body).sort()).toEqual(['buildRecord', 'certificate', 'hin', 'life', 'model', 'number']);
    expect(await ours.get(String(body['buildRecord']))).toMatchObject({
      status: 200,
      headers: { 'content-type': expect.stringContaining('application/pdf') },
    });
  });

  it('ends at once when the role does, and is of the new dealer when the role is given anew', async () => {
    await cast.recorded('administrator', '/api/people/DEA-8/role-ends', {
      role: 'dealer',
      reason: 'sells for another',
    });
    expect((await theirs.get('/api/own-hulls')).status).toBe(403);
    await cast.recorded('administrator', '/api/people/DEA-8/roles', { role: 'dealer', dealer: 'NLM' });
    expect(await numbers(theirs)).toEqual(['OURS-1']);
  });
});
