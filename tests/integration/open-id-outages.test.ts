import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { AccessSettings } from '../../apps/service/src/platform/access/settings.js';
import { openPlantWithOffice, whoIsAt, type PlantWithOffice } from '../support/open-id/plant-with-office.js';
import { startProvider } from '../support/open-id/start-provider.js';
import { comeBackAs, signInByOffice } from '../support/open-id/sign-in-there.js';
import { Visitor } from '../support/open-id/visitor.js';
import { startService, type RunningService } from '../support/service.js';

/** Runs something against a service with these settings of the office, and ends the service. */
const withOffice = async <T>(
  openId: AccessSettings['openId'],
  run: (service: RunningService) => Promise<T>,
): Promise<T> => {
  const service = await startService({ access: new AccessSettings({ openId }) });
  return run(service).finally(() => service.close());
};

const listening = async (server: Server): Promise<string> => {
  await once(server.listen(0, '127.0.0.1'), 'listening');
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
};

const office = (issuer: string, clientSecret = 'secret of hulls') => ({
  ...{ name: 'Harbour office', issuer, clientId: 'hulls', clientSecret, publicUrl: null },
});

const problemAt = async (url: string): Promise<{ status: number; type: string }> => {
  const answer = await fetch(`${url}/api/open-id/start`, { redirect: 'manual' });
  const { type } = (await answer.json()) as { type: string };
  return { status: answer.status, type };
};

const UNAVAILABLE = { status: 503, type: '/problems/open-id-unavailable' };

describe('without a sign-in of the office', () => {
  it('its routes say so, and a session names none', async () => {
    await withOffice(null, async ({ url }) => {
      expect(await problemAt(url)).toEqual({ status: 404, type: '/problems/open-id-off' });
      expect((await fetch(`${url}/api/open-id/return?code=a&state=b`)).status).toBe(404);
      expect(await (await fetch(`${url}/api/session`)).json()).toMatchObject({ openId: null });
    });
  });
});

describe('a provider that is away', () => {
  it('keeps no service from starting, nor people from signing in otherwise, and is asked again when it is back', async () => {
    const gone = createServer();
    const issuer = await listening(gone);
    gone.close();
    await withOffice(office(issuer), async ({ url }) => {
      expect(await problemAt(url)).toEqual(UNAVAILABLE);
      expect(await (await fetch(`${url}/api/session`)).json()).toMatchObject({ openId: 'Harbour office' });
      const provider = await startProvider({ PORT: new URL(issuer).port });
      const answer = await fetch(`${url}/api/open-id/start`, { redirect: 'manual' });
      await provider.stop();
      expect(answer.status).toBe(302);
      // What it said of itself is kept.
      expect((await fetch(`${url}/api/open-id/start`, { redirect: 'manual' })).status).toBe(302);
    });
  });

  it('is waited for five seconds, once for all who ask', async () => {
    let asked = 0;
    const slow = createServer(() => (asked += 1));
    await withOffice(office(await listening(slow)), async ({ url }) => {
      const answers = await Promise.all(Array.from({ length: 5 }, () => problemAt(url)));
      expect(answers).toEqual(Array(5).fill(UNAVAILABLE));
      expect(asked).toBe(1);
    });
    slow.closeAllConnections();
    slow.close();
  });

  it.each([
    ['another issuer', { issuer: 'https://elsewhere.example' }, 200],
    ['an error', {}, 500],
    ['something else', { hello: 'world' }, 200],
  ])('or that answers with %s is not taken for it', async (_what, body, status) => {
    const strange = createServer((_request, response) => {
      response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(body));
    });
    await withOffice(office(await listening(strange)), async ({ url }) =>
      expect(await problemAt(url)).toEqual(UNAVAILABLE),
    );
    strange.close();
  });
});

describe('a provider that goes away while somebody signs in', () => {
  let plant: PlantWithOffice;
  beforeAll(async () => {
    plant = await openPlantWithOffice();
  });
  afterAll(() => plant.close());

  it('is told as that, with no part of the code', async () => {
    const visitor = new Visitor();
    const { url } = plant.service;
    const back = await comeBackAs(visitor, url, 'ada');
    await plant.provider.stop();
    const shown = await visitor.go(back);
    expect([shown.status, shown.text.includes('The sign-in of Harbour office does not answer.')]).toEqual([503, true]);
    expect(shown.text).not.toContain(back.searchParams.get('code') as string);
    expect(await whoIsAt(visitor, url)).toMatchObject({ badge: null });
  });
});

describe('the secret of the client', () => {
  it.each(['client_secret_basic', 'client_secret_post'])(
    'goes to the provider by %s when it asks for that',
    async (how) => {
      const provider = await startProvider({ AUTH_METHOD: how });
      const shown = await withOffice(provider.set, ({ url }) => signInByOffice(new Visitor(), url, 'ada'));
      await provider.stop();
      expect(shown.text).toContain('linked to no badge');
    },
  );

  it('when it is wrong, is told to whoever can mend it, and not shown', async () => {
    const provider = await startProvider();
    const set = office(provider.issuer, 'wrong secret');
    const shown = await withOffice(set, ({ url }) => signInByOffice(new Visitor(), url, 'ada'));
    await provider.stop();
    expect([shown.status, shown.text.includes('checks OPENID_CLIENT_ID and OPENID_CLIENT_SECRET')]).toEqual([
      503,
      true,
    ]);
    expect(shown.text).not.toContain('wrong secret');
  });
});
