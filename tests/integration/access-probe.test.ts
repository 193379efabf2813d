import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Controller, Get, Module, Post } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import type { NestExpressApplication } from '@nestjs/platform-express';
import { ROLES, type Route as RouteOfTable } from '@hull-record/contracts';
import { AppModule } from '../../apps/service/src/app.module.js';
import { beginCall } from '../../apps/service/src/platform/access/begin-call.js';
import { AccessSettings } from '../../apps/service/src/platform/access/settings.js';
import { Route } from '../../apps/service/src/platform/http/route.js';
import { Cast } from '../support/access/cast.js';
import { Client } from '../support/access/client.js';
import { type RunningService, startService } from '../support/service.js';

const reached: string[] = [];

/** A route with all that a route has, but for a place in the table. */
const NOT_IN_TABLE: RouteOfTable = { method: 'GET', path: '/api/probe/described', tag: 'probe', summary: 'A probe.' };

@Controller()
class Probe {
  @Get('/api/probe/plain')
  plain(): string {
    reached.push('plain');
    return 'reached';
  }

  @Post('/api/probe/plain')
  change(): string {
    reached.push('change');
    return 'reached';
  }

  @Route(NOT_IN_TABLE)
  described(): string {
    reached.push('described');
    return 'reached';
  }
}

@Module({ controllers: [Probe] })
class ProbeModule {}

let service: RunningService;
let cast: Cast;
let app: NestExpressApplication;
let url: string;
beforeAll(async () => {
  service = await startService({ roles: 'as opened' });
  cast = await Cast.gather(service);
  const access = new AccessSettings({ plant: { code: 'TARROW', timeZone: 'America/New_York' } });
  const inside = {
    module: ProbeModule,
    imports: [AppModule.for({ db: service.db, dataDir: service.dataDir, access })],
  };
  app = await NestFactory.create<NestExpressApplication>(inside, { logger: false });
  app.use(beginCall);
  await app.listen(0, '127.0.0.1');
  url = await app.getUrl();
});
afterAll(async () => {
  await app.close();
  await service.close();
});

/** The browser of somebody, at the address of the service with the probe. */
const at = (client: Client): Client => {
  const there = new Client(url);
  const session = client.cookie('hull-record-session');
  if (session) there.setCookie('hull-record-session', session);
  there.csrf = client.csrf;
  return there;
};

const CALLS = [
  ['GET', '/api/probe/plain'],
  ['POST', '/api/probe/plain'],
  ['GET', '/api/probe/described'],
] as const;

describe('a route that somebody adds without a line in the table', () => {
  it('is refused to everybody, whatever the role, and to who is not signed in', async () => {
    const callers = [new Client(url), ...ROLES.map((role) => at(cast.as(role)))];
    for (const caller of callers)
      for (const [method, path] of CALLS) {
        const reply = await (method === 'GET' ? caller.get(path) : caller.post(path));
        expect(reply).toMatchObject({ status: 403, body: { type: '/problems/not-allowed' } });
      }
    expect(reached).toEqual([]);
  });

  it('stands in a service that answers the same people where the table says so', async () => {
    expect((await at(cast.as('auditor')).get('/api/lots')).status).toBe(200);
    expect((await at(cast.as('dealer')).get('/api/lots')).status).toBe(403);
    expect((await new Client(url).get('/api/session')).status).toBe(200);
  });
});
