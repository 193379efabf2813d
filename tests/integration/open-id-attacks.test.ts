import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { openPlantWithOffice, whoIsAt, type PlantWithOffice } from '../support/open-id/plant-with-office.js';
import { comeBackAs, RETURN, signInByOffice, signInThere } from '../support/open-id/sign-in-there.js';
import { Visitor, type Shown } from '../support/open-id/visitor.js';

let plant: PlantWithOffice;
let url: string;
beforeAll(async () => {
  plant = await openPlantWithOffice();
  url = plant.service.url;
  await plant.shop.post('/api/people/LAM-01/open-id-links', { subject: 'mallory' });
});
afterAll(() => plant.close());

const ABROAD = { from: new URL('http://provider.invalid') };
const COOKIE = 'hull-record-open-id';
const NOT_PROVED = 'does not belong to the sign-in that was begun here';
const NOT_BEGUN = 'No sign-in waits here';

/** A refused return: nobody is signed in, the cookie is gone, and the page repeats no secret of the address. */
const expectRefused = async (visitor: Visitor, shown: Shown, why: string): Promise<void> => {
  expect(shown.status).toBe(401);
  expect(shown.text).toContain(why);
  expect(shown.text).not.toContain(shown.url.searchParams.get('code') ?? 'no code');
  expect(await whoIsAt(visitor, url)).toMatchObject({ badge: null });
  expect(visitor.cookie(url, COOKIE)).toBeUndefined();
};

/** Begins, changes what the provider is asked, and signs in there. */
const begunWith = async (visitor: Visitor, change: (asked: URLSearchParams) => void): Promise<Shown> => {
  const { url: asked } = await visitor.go(`${url}/api/open-id/start`, { stop: new RegExp(plant.provider.issuer) });
  change(asked.searchParams);
  return signInThere(visitor, await visitor.go(asked, ABROAD), 'ada', RETURN);
};

describe('a return is refused', () => {
  it.each([
    ['with another state', (back: URL) => back.searchParams.set('state', 'made-up')],
    ['without a state', (back: URL) => back.searchParams.delete('state')],
    ['with two states', (back: URL) => back.searchParams.append('state', back.searchParams.get('state') as string)],
    ['with the name of another issuer', (back: URL) => back.searchParams.set('iss', 'https://elsewhere.example')],
    ['with a made-up code', (back: URL) => back.searchParams.set('code', 'made-up-code')],
    ['without a code', (back: URL) => back.searchParams.delete('code')],
  ])('%s, and cannot be mended afterwards', async (_what, change) => {
    const visitor = new Visitor();
    const right = await comeBackAs(visitor, url, 'ada');
    const wrong = new URL(right);
    change(wrong);
    const id = visitor.cookie(url, COOKIE) as string;
    await expectRefused(visitor, await visitor.go(wrong, ABROAD), NOT_PROVED);
    visitor.plant(url, COOKIE, id, false);
    await expectRefused(visitor, await visitor.go(right, ABROAD), NOT_BEGUN);
  });

  it('when it comes a second time, with the cookie of the first', async () => {
    const visitor = new Visitor();
    const back = await comeBackAs(visitor, url, 'ada');
    const id = visitor.cookie(url, COOKIE) as string;
    expect((await visitor.go(back, ABROAD)).status).toBe(200);
    const thief = new Visitor();
    thief.plant(url, COOKIE, id, false);
    await expectRefused(thief, await thief.go(back, ABROAD), NOT_BEGUN);
    expect(await whoIsAt(visitor, url)).toMatchObject({ badge: 'QUA-01' });
  });

  it('but for one, when ten come at the same moment', async () => {
    const visitor = new Visitor();
    const back = await comeBackAs(visitor, url, 'ada');
    const headers = { cookie: visitor.header(url) };
    const answers = await Promise.all(Array.from({ length: 10 }, () => fetch(back, { headers })));
    expect(answers.map(({ status }) => status).sort()).toEqual([200, ...Array<number>(9).fill(401)]);
  });

  it('when the provider signed another nonce', async () => {
    const visitor = new Visitor();
    const { url: back } = await begunWith(visitor, (asked) => asked.set('nonce', 'of-another-sign-in'));
    await expectRefused(visitor, await visitor.go(back, ABROAD), NOT_PROVED);
  });

  it('when the code was asked for with the challenge of another secret', async () => {
    const visitor = new Visitor();
    const { url: back } = await begunWith(visitor, (asked) => asked.set('code_challenge', 'A'.repeat(43)));
    await expectRefused(visitor, await visitor.go(back, ABROAD), NOT_PROVED);
  });

  it('after ten minutes', async () => {
    const visitor = new Visitor();
    const back = await comeBackAs(visitor, url, 'ada');
    await plant.service.asOwner("update work.open_id_try set until = now() - interval '1 second'");
    await expectRefused(visitor, await visitor.go(back, ABROAD), NOT_BEGUN);
    expect(await plant.service.asOwner('select from work.open_id_try')).toEqual([]);
  });

  it('when the provider signed nobody in; its words are not repeated', async () => {
    const visitor = new Visitor();
    const { url: asked } = await visitor.go(`${url}/api/open-id/start`, { stop: new RegExp(plant.provider.issuer) });
    const back = new URL(`${url}/api/open-id/return`);
    const { issuer } = plant.provider;
    const said = { error: 'access_denied', error_description: '<b>call 555-0100</b>', iss: issuer };
    back.search = new URLSearchParams({ state: asked.searchParams.get('state') as string, ...said }).toString();
    const shown = await visitor.go(back, ABROAD);
    await expectRefused(visitor, shown, 'was not completed there');
    expect(shown.text).not.toMatch(/555-0100|<b>/);
  });
});

describe('a stolen code', () => {
  it('does not serve in another browser, which has begun nothing', async () => {
    const back = await comeBackAs(new Visitor(), url, 'ada');
    const thief = new Visitor();
    await expectRefused(thief, await thief.go(back, ABROAD), NOT_BEGUN);
  });

  it('does not serve in a browser that began a sign-in of its own: neither as it is, nor under its own state', async () => {
    for (const asOwn of [false, true]) {
      const back = await comeBackAs(new Visitor(), url, 'ada');
      const thief = new Visitor();
      const own = await comeBackAs(thief, url, 'mallory');
      if (asOwn) back.searchParams.set('state', own.searchParams.get('state') as string);
      await expectRefused(thief, await thief.go(back, ABROAD), NOT_PROVED);
    }
  });

  it('of another client of the same provider does not serve', async () => {
    const visitor = new Visitor();
    const { url: back } = await begunWith(visitor, (asked) => asked.set('client_id', 'other'));
    expect(back.searchParams.get('code')).toMatch(/./);
    await expectRefused(visitor, await visitor.go(back, ABROAD), NOT_PROVED);
  });
});

describe('what somebody put into the browser before', () => {
  it('is never made a session', async () => {
    const visitor = new Visitor();
    visitor.plant(url, 'hull-record-session', 'known-to-somebody-else');
    await signInByOffice(visitor, url, 'ada');
    expect(visitor.cookie(url, 'hull-record-session')).not.toBe('known-to-somebody-else');
    const other = new Visitor();
    other.plant(url, 'hull-record-session', 'known-to-somebody-else');
    expect(await whoIsAt(other, url)).toMatchObject({ badge: null });
  });

  it('is never the id of a sign-in: each start makes a new one', async () => {
    const visitor = new Visitor();
    visitor.plant(url, COOKIE, 'known-to-somebody-else', false);
    const back = await comeBackAs(visitor, url, 'ada');
    expect(visitor.cookie(url, COOKIE)).toMatch(/^[\w-]{32}$/);
    const other = new Visitor();
    other.plant(url, COOKIE, 'known-to-somebody-else', false);
    await expectRefused(other, await other.go(back, ABROAD), NOT_BEGUN);
  });

  it('is of no use to sign somebody in as another: the link of a return works in the browser that began it alone', async () => {
    const back = await comeBackAs(new Visitor(), url, 'mallory');
    const victim = new Visitor();
    await comeBackAs(victim, url, 'ada');
    await expectRefused(victim, await victim.go(back, ABROAD), NOT_PROVED);
  });
});
