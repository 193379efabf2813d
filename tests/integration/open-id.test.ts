import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { randomUUID } from 'node:crypto';
import { setTimeout as sleep } from 'node:timers/promises';
import { enrol } from '../support/devices.js';
import { openPlantWithOffice, whoIsAt, type PlantWithOffice } from '../support/open-id/plant-with-office.js';
import { comeBackAs, RETURN, signInByOffice, signInThere } from '../support/open-id/sign-in-there.js';
import { Visitor } from '../support/open-id/visitor.js';

let plant: PlantWithOffice;
let url: string;
beforeAll(async () => {
  plant = await openPlantWithOffice();
  url = plant.service.url;
});
afterAll(() => plant.close());

const NOBODY = { badge: null, device: null };
const ABROAD = { from: new URL('http://provider.invalid') };

/** A browser that the desk has enrolled. */
const atTablet = async (code: string): Promise<Visitor> => {
  await plant.shop.act('/api/devices', { code, description: 'Tablet', ratedForClassifiedArea: false });
  const visitor = new Visitor();
  const [name = '', value = ''] = (await enrol(plant.shop, code)).cookie.split('=');
  visitor.plant(url, name, value);
  return visitor;
};

describe('signing in by the office', () => {
  it('sends the browser to the provider with code, PKCE, state and nonce, and nothing but an id in its cookie', async () => {
    const answer = await fetch(`${url}/api/open-id/start`, { redirect: 'manual' });
    expect(answer.status).toBe(302);
    const to = new URL(answer.headers.get('location') as string);
    expect(to.origin).toBe(plant.provider.issuer);
    const sent = Object.fromEntries(to.searchParams);
    expect(sent).toEqual({
      ...{ client_id: 'hulls', response_type: 'code', scope: 'openid', code_challenge_method: 'S256' },
      redirect_uri: `${url}/api/open-id/return`,
      ...{ state: expect.stringMatching(/^.{32}$/), nonce: expect.stringMatching(/^.{32}$/) },
      code_challenge: expect.stringMatching(/^.{43}$/),
    });
    const [cookie = '', ...more] = answer.headers.getSetCookie();
    expect(more).toEqual([]);
    expect(cookie).toMatch(
      /^hull-record-open-id=[\w-]{32}; Max-Age=600; Path=\/; Expires=[^;]+; HttpOnly; SameSite=Lax$/,
    );
    for (const secret of [sent['state'], sent['nonce']]) expect(cookie).not.toContain(secret);
  });

  it('begins a session for the badge to which an administrator linked the account', async () => {
    const visitor = new Visitor();
    const landed = await signInByOffice(visitor, url, 'ada');
    expect([landed.status, landed.headers.get('content-type')]).toEqual([200, 'text/html; charset=utf-8']);
    expect(await whoIsAt(visitor, url)).toEqual({ badge: 'QUA-01', device: 'DESK' });
    expect(visitor.cookie(url, 'hull-record-open-id')).toBeUndefined();
  });

  it('lands on a page of this site that goes on by itself: without script, and with a link', async () => {
    const landed = await signInByOffice(new Visitor(), url, 'ada');
    expect(landed.text).toContain('<meta http-equiv="refresh" content="0; url=/">');
    expect(landed.text).toContain('<a href="/">Go on to Hull Record</a>');
    expect(landed.text).not.toMatch(/<script|<style|style=/);
    expect(landed.headers.get('content-security-policy')).toMatch(/^default-src 'self';/);
    expect(landed.headers.get('cache-control')).toBe('no-store');
  });

  it('ends the session that this browser had, though its cookie does not come along from the other site', async () => {
    const visitor = new Visitor();
    await signInByOffice(visitor, url, 'ada');
    const before = visitor.cookie(url, 'hull-record-session') as string;
    expect((await signInByOffice(visitor, url, 'ada')).status).toBe(200);
    expect(visitor.cookie(url, 'hull-record-session')).not.toBe(before);
    const old = new Visitor();
    old.plant(url, 'hull-record-session', before);
    expect(await whoIsAt(old, url)).toEqual(NOBODY);
    expect(await whoIsAt(visitor, url)).toMatchObject({ badge: 'QUA-01' });
  });
});

describe('an account that is linked to no badge', () => {
  it('is told what an administrator needs, and signs in when it is linked; the link can be ended', async () => {
    const visitor = new Visitor();
    const refused = await signInByOffice(visitor, url, 'grace');
    expect(refused.status).toBe(403);
    expect(refused.text).toContain(
      `Give an administrator its issuer, ${plant.provider.issuer}, and its subject, grace:`,
    );
    expect(await whoIsAt(visitor, url)).toEqual(NOBODY);
    const link = (end = ''): Promise<{ status: number }> =>
      plant.shop.post(`/api/people/LAM-01/open-id-link${end || 's'}`, { subject: 'grace' });
    expect([(await link()).status, (await link()).status]).toEqual([200, 200]);
    await signInByOffice(visitor, url, 'grace');
    expect(await whoIsAt(visitor, url)).toMatchObject({ badge: 'LAM-01' });
    expect((await link('-ends')).status).toBe(200);
    expect(await whoIsAt(visitor, url)).toEqual(NOBODY);
    expect((await signInByOffice(visitor, url, 'grace')).status).toBe(403);
    expect(await link('-ends')).toMatchObject({ status: 422, body: { type: '/problems/not-found' } });
  });

  it('is told as problem details to who does not ask for a page', async () => {
    const visitor = new Visitor();
    const back = await comeBackAs(visitor, url, 'grace');
    const answer = await fetch(back, { headers: { cookie: visitor.header(url), accept: 'application/json' } });
    const { issuer } = plant.provider;
    expect([answer.status, answer.headers.get('content-type')]).toEqual([
      403,
      'application/problem+json; charset=utf-8',
    ]);
    expect(await answer.json()).toMatchObject({
      ...{ type: '/problems/open-id-not-linked', issuer, subject: 'grace' },
    });
  });

  it('is not linked by its name, even when the name is that of a badge', async () => {
    const refused = await signInByOffice(new Visitor(), url, 'LAM-01');
    expect([refused.status, refused.text.includes('linked to no badge')]).toEqual([403, true]);
  });

  it('cannot be linked to a second badge, or to none; what is linked is listed', async () => {
    const again = await plant.shop.post('/api/people/LAM-01/open-id-links', { subject: 'ada' });
    expect(again).toMatchObject({ status: 409, body: { type: '/problems/open-id-linked-to-another' } });
    expect(JSON.stringify(again.body)).toContain('badge QUA-01');
    expect((await plant.shop.post('/api/people/NO-1/open-id-links', { subject: 'x' })).status).toBe(404);
    const links = await plant.shop.read('/api/people/QUA-01/open-id-links');
    expect(links).toEqual([{ issuer: `${plant.provider.issuer}/`, subject: 'ada' }]);
  });

  it('is linked by an administrator alone', async () => {
    const headers = { 'content-type': 'application/json', ...(await plant.service.signedIn('QUA-01')) };
    for (const path of ['open-id-links', 'open-id-link-ends']) {
      const asked = { method: 'POST', headers, body: JSON.stringify({ subject: 'ada' }) };
      expect((await fetch(`${url}/api/people/QUA-01/${path}`, asked)).status).toBe(403);
    }
    expect((await fetch(`${url}/api/people/QUA-01/open-id-links`, { headers })).status).toBe(403);
  });
});

describe('a person whose roles have ended', () => {
  it('is not signed in, and told why', async () => {
    await plant.shop.act('/api/people', { badge: 'LEFT-1', name: 'Invented three', roles: ['inspector'] });
    await plant.shop.post('/api/people/LEFT-1/open-id-links', { subject: 'joan' });
    const visitor = new Visitor();
    await signInByOffice(visitor, url, 'joan');
    expect(await whoIsAt(visitor, url)).toMatchObject({ badge: 'LEFT-1' });
    await plant.shop.act('/api/people/LEFT-1/role-ends', { role: 'inspector', reason: 'Left.', id: randomUUID() });
    const later = new Visitor();
    const refused = await signInByOffice(later, url, 'joan');
    expect([refused.status, refused.text.includes('Badge LEFT-1 has no role here.')]).toEqual([403, true]);
    expect(await whoIsAt(later, url)).toEqual(NOBODY);
  });
});

const endSessionAt = (code: string): Promise<unknown> =>
  plant.service.asOwner(
    `update work.session s set ended_at = now() from fact.device d where d.root = s.device_id and d.code = $1`,
    [code],
  );

describe('at an enrolled device', () => {
  it('the provider asks who stands there though somebody is signed in with it, and the person takes the device over', async () => {
    const visitor = await atTablet('TAB-7');
    await signInByOffice(visitor, url, 'ada');
    expect(await whoIsAt(visitor, url)).toEqual({ badge: 'QUA-01', device: 'TAB-7' });
    const asked = await visitor.go(`${url}/api/open-id/start`);
    expect(asked.url.origin).toBe(plant.provider.issuer);
    const back = await signInThere(visitor, asked, 'ada', RETURN);
    expect((await visitor.go(back.url, ABROAD)).status).toBe(200);
    const sessions = await plant.service.asOwner<{ open: number }>(
      `select count(*)::int as open from work.session s join fact.device d on d.root = s.device_id
       where d.code = 'TAB-7' and s.ended_at is null`,
    );
    expect(sessions).toEqual([{ open: 1 }]);
  });

  it.each([
    ['TAB-8', ['prompt']],
    ['TAB-10', ['prompt', 'max_age']],
  ])('%s, whoever takes %j out of the address is not signed in as the one before', async (code, taken) => {
    const visitor = await atTablet(code);
    await signInByOffice(visitor, url, 'ada');
    await endSessionAt(code);
    await sleep(3_000); // times in tokens are whole seconds
    const start = await visitor.go(`${url}/api/open-id/start`, { stop: new RegExp(plant.provider.issuer) });
    for (const name of taken) start.url.searchParams.delete(name);
    const back = await signInThere(visitor, await visitor.go(start.url, ABROAD), 'nobody is asked', RETURN);
    const landed = await visitor.go(back.url, ABROAD);
    expect([landed.status, landed.text.includes('This device is shared')]).toEqual([401, true]);
    expect(await whoIsAt(visitor, url)).toEqual({ badge: null, device: code });
  });

  it('that was revoked meanwhile, it counts as a browser like any other', async () => {
    const visitor = await atTablet('TAB-9');
    const back = await comeBackAs(visitor, url, 'ada');
    await plant.shop.act('/api/devices/TAB-9/revocations', { reason: 'Lost.' });
    await visitor.go(back, ABROAD);
    expect(await whoIsAt(visitor, url)).toEqual({ badge: 'QUA-01', device: 'DESK' });
  });
});
