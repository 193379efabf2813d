import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { routes, WHO_MAY, type Route } from '@hull-record/contracts';
import type { DataSource, QueryRunner } from 'typeorm';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/dealers', { code: 'PRW', name: 'Pell Reach Watercraft', place: 'Pell Reach' });
  for (const dealer of ['NLM', 'PRW'])
    await shop.act('/api/people', { badge: `D-${dealer}`, name: `Desk ${dealer}`, roles: ['dealer'], dealer });
  for (const [number, dealer] of [
    ['N1', 'NLM'],
    ['N2', 'NLM'],
    ['P1', 'PRW'],
  ] as const) {
    await shop.startHull(number);
    await shop.act(`/api/hulls/${number}/life`, { what: 'at dealer', dealer });
  }
});
afterAll(() => service.close());

interface Told {
  readonly status: number;
  readonly body: string;
  readonly statements: number;
}

/** What a dealer is answered, and how many statements it took. */
const ask = async (badge: string, path: string, method = 'GET', body?: string): Promise<Told> => {
  const headers = { ...(await service.signedIn(badge)), 'content-type': 'application/json' };
  const asked = counting(service.db);
  const answer = await fetch(`${service.url}${path}`, { method, headers, ...(body === undefined ? {} : { body }) });
  const text = answer.headers.get('content-type') === 'application/pdf' ? 'PDF' : await answer.text();
  if (text === 'PDF') await answer.arrayBuffer();
  return { status: answer.status, body: text, statements: asked() };
};

/** Counts the statements that are sent from now until it is asked. */
const counting = (db: DataSource): (() => number) => {
  let statements = 0;
  const create = db.createQueryRunner.bind(db);
  db.createQueryRunner = (...options): QueryRunner => {
    const runner = create(...options);
    const query = runner.query.bind(runner);
    runner.query = ((...given: Parameters<QueryRunner['query']>) => {
      statements += 1;
      return query(...given);
    }) as QueryRunner['query'];
    return runner;
  };
  return () => {
    db.createQueryRunner = create;
    return statements;
  };
};

describe('a dealer', () => {
  it('sees own hulls, with their papers, and no others', async () => {
    const list = JSON.parse((await ask('D-NLM', '/api/own-hulls')).body) as { items: { number: string }[] };
    expect(list.items.map(({ number }) => number).sort()).toEqual(['N1', 'N2']);
    expect(JSON.parse((await ask('D-NLM', '/api/own-hulls/N1')).body)).toMatchObject({
      ...{ number: 'N1', hin: null, model: 'TS86' },
      life: [{ what: 'at dealer' }],
      buildRecord: '/api/own-hulls/N1/build-record.pdf',
    });
    expect(await ask('D-NLM', '/api/own-hulls/N1/build-record.pdf')).toMatchObject({ status: 200, body: 'PDF' });
  });

  it.each(['/api/own-hulls/NUMBER', '/api/own-hulls/NUMBER/build-record.pdf'])(
    'cannot tell by %s a hull of another dealer from none: same answer, as many statements',
    async (path) => {
      const named = (number: string): Promise<Told> => ask('D-NLM', path.replace('NUMBER', number));
      const theirs = await named('P1');
      const none = await named('X9');
      expect(theirs).toMatchObject({ status: 404 });
      expect(theirs.statements).toBeGreaterThan(0);
      expect({ ...theirs, body: theirs.body.replaceAll('P1', 'X9') }).toEqual(none);
    },
  );

  it('is refused every route that is not for dealers, whatever it names, by the sign-in alone', async () => {
    const others = (Object.entries(routes) as [keyof typeof routes, Route][]).filter(
      ([name]) => typeof WHO_MAY[name] !== 'string' && !WHO_MAY[name].includes('dealer'),
    );
    const answers = new Set<string>();
    for (const [, { method, path }] of others) {
      for (const named of ['P1', 'X9']) {
        const { status, body, statements } = await ask(
          'D-NLM',
          path.replace(/:\w+/g, named),
          method,
          method === 'GET' ? undefined : '{}',
        );
        answers.add(`${status} ${statements} ${body}`);
      }
    }
    expect(others.length).toBeGreaterThan(100);
    expect([...answers]).toEqual([expect.stringMatching(/^403 1 .*not-allowed/)]);
  });

  it('who lost the hull to another dealer sees it no more', async () => {
    await shop.act('/api/hulls/N2/life', { what: 'at dealer', dealer: 'PRW' });
    expect((await ask('D-NLM', '/api/own-hulls/N2')).status).toBe(404);
    expect((await ask('D-PRW', '/api/own-hulls/N2')).status).toBe(200);
  });
});
