import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { ROLES, type Route, routes, WHO_MAY } from '@hull-record/contracts';
import { Cast } from '../support/access/cast.js';
import { Client, type Reply } from '../support/access/client.js';
import { routesOf } from '../support/access/routes-of.js';
import { countRows } from '../support/fact-rows.js';
import { type RunningService, startService } from '../support/service.js';

let service: RunningService;
let cast: Cast;
beforeAll(async () => {
  service = await startService({ roles: 'as opened' });
  cast = await Cast.gather(service);
});
afterAll(() => service.close());

const UNKNOWN = '0198c0de-0000-7000-8000-00000000dead';

/** Calls a route with an unknown id in its path and an empty body. */
const call = (client: Client, { method, path }: { method: string; path: string }): Promise<Reply> => {
  const filled = path.replace(/:\w+/g, UNKNOWN);
  return method === 'GET' ? client.get(filled) : client.post(filled, {});
};

/** Name in the table of a route that the service answers; throws when the table does not have it. */
const nameOf = ({ method, path }: { method: string; path: string }): keyof typeof WHO_MAY => {
  const found = (Object.entries(routes) as unknown as [keyof typeof routes, Route][]).find(
    ([, route]) => route.method === method && route.path === path,
  );
  if (!found || !(found[0] in WHO_MAY)) throw new Error(`${method} ${path} is not in the table of who may do what.`);
  return found[0];
};

const named = (reply: Reply): string =>
  `${reply.status}${typeof reply.body?.['type'] === 'string' ? ` ${String(reply.body['type'])}` : ''}`;

const REFUSED = '403 /problems/not-allowed';
const UNKNOWN_CALLER = '401 /problems/sign-in-needed';

describe('every route that the service answers', () => {
  it('is in the table of who may do what, and the table has no other', () => {
    const answered = routesOf(service.server).map(nameOf);
    expect([...answered].sort()).toEqual(Object.keys(WHO_MAY).sort());
    expect(answered.length).toBeGreaterThan(140);
    expect(() => nameOf({ method: 'GET', path: '/api/made-up' })).toThrow('is not in the table');
  });

  it('asks whoever is not signed in to sign in, unless it is for anyone', async () => {
    for (const route of routesOf(service.server)) {
      const name = nameOf(route);
      const got = named(await call(new Client(service.url), route));
      if (WHO_MAY[name] === 'anyone') expect([name, got]).not.toEqual([name, UNKNOWN_CALLER]);
      else expect([name, got]).toEqual([name, UNKNOWN_CALLER]);
    }
  });

  it.each(ROLES)('is open to %s exactly where the table says so', async (role) => {
    const before = await countRows(service);
    const answers: Record<string, string> = {};
    const expected: Record<string, unknown> = {};
    for (const route of routesOf(service.server).filter(({ path }) => path !== '/api/sign-out')) {
      const name = nameOf(route);
      const access = WHO_MAY[name];
      const allowed = typeof access === 'string' || access.includes(role);
      answers[name] = named(await call(cast.as(role), route));
      expected[name] = allowed ? expect.not.stringMatching(/^(401|5)|not-allowed$/) : REFUSED;
    }
    expect(answers).toEqual(expected);
    // What is allowed with an empty body is malformed: so nothing was recorded either way.
    expect(await countRows(service)).toEqual(before);
  });

  it('lets everybody sign out, and nobody call it twice', async () => {
    for (const role of ROLES) {
      const left = await cast.as(role).post('/api/sign-out');
      expect([role, left.status, left.body['person']]).toEqual([role, 200, null]);
      expect(named(await cast.as(role).post('/api/sign-out'))).toBe(UNKNOWN_CALLER);
      expect((await cast.as(role).get('/api/session')).body).toMatchObject({ person: null, csrf: null });
    }
  });
});
