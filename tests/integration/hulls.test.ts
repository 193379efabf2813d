import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullPage, HullView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const hull = (number: string): Promise<HullView> => shop.read(`/api/hulls/${encodeURIComponent(number)}`);
const start = (number: string, more: Fields = {}): Promise<Answer> =>
  shop.post('/api/hulls', shop.envelope({ number, model: 'TS86', mold: 'M-86-1', ...more }));
const assign = (number: string, hin: string, more: Fields = {}): Promise<Answer> =>
  shop.post(`/api/hulls/${number}/hins`, shop.envelope({ hin, ...more }));
const refusal = (status: number, code: string, pointer: string) => ({
  status,
  body: { type: `/problems/${code}`, errors: [{ pointer }] },
});

describe('a hull', () => {
  it('begins with its hull molding in a mold', async () => {
    const { body } = await start('A-1');
    expect(body.result).toMatchObject({ number: 'A-1', part: 'A-1-H', scheduleVersion: 1, warnings: [] });
    const found = await hull('A-1');
    expect(found).toMatchObject({ number: 'A-1', hin: null, model: 'TS86', now: { what: 'part started' } });
    expect(found.parts).toMatchObject([{ number: 'A-1-H', kind: 'hull molding', mold: 'M-86-1' }]);
  });

  it('is told from others by letters and digits alone: 86-1 and 861 and 86 1 are one number', async () => {
    expect((await start('86-1')).status).toBe(201);
    for (const same of ['861', '86 1', '8-6/1', '86–1'])
      expect(await start(same, { partNumber: `other-${same}` })).toMatchObject(refusal(409, 'number-taken', '/number'));
    expect((await hull('8 61')).number).toBe('86-1');
    expect((await hull('86/1')).number).toBe('86-1');
  });

  it('is started once when two start the same number at once', async () => {
    const both = await Promise.all([start('AT-1'), start('AT1', { partNumber: 'AT1-other' })]);
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
  });

  it.each<[Fields, number, string, string]>([
    [{ model: 'NIX' }, 422, 'not-found', '/model'],
    [{ mold: 'NIX' }, 422, 'not-found', '/mold'],
    [{ mold: 'M-86-D' }, 422, 'mold-of-another-part', '/mold'],
    [{ scheduleVersion: 7 }, 422, 'not-found', '/scheduleVersion'],
    [{ partNumber: 'A-1-H' }, 409, 'code-taken', '/partNumber'],
    [{ number: '-' }, 400, 'invalid-request', '/number'],
    [{ number: ' ' }, 400, 'invalid-request', '/number'],
  ])('with %j is refused with the field', async (wrong, status, code, pointer) => {
    await start('A-1');
    expect(await start('A-2', wrong)).toMatchObject(refusal(status, code, pointer));
    expect((await shop.get('/api/hulls/A-2')).status).toBe(404);
  });

  it('is listed once, in a stable order, while hulls are started', async () => {
    for (let i = 0; i < 9; i += 1) await shop.startHull(`PAGE-${i}`);
    const seen: string[] = [];
    let cursor: string | null = '';
    for (let turn = 0; cursor !== null; turn += 1) {
      const query: string = `search=page&limit=2${cursor === '' ? '' : `&cursor=${cursor}`}`;
      const page: HullPage = await shop.read(`/api/hulls?${query}`);
      seen.push(...page.items.map(({ number }) => number).filter((number) => !number.includes('late')));
      cursor = page.next;
      await shop.startHull(`PAGE-late-${turn}`);
    }
    expect([...seen].sort()).toEqual(Array.from({ length: 9 }, (_, i) => `PAGE-${i}`));
  });
});

describe('a hull identification number', () => {
  it('is assigned later, is kept without dashes, and then names the hull as well as its number does', async () => {
    await start('H-1');
    const { status, body } = await assign('H-1', 'trz 00042 k525');
    expect([status, body.result]).toMatchObject([201, { hin: 'TRZ00042K525', warnings: [] }]);
    expect((await hull('TRZ-00042-K525')).number).toBe('H-1');
    expect(await hull('H-1')).toMatchObject({ hin: body.result['display'] });
    expect((await shop.read<HullPage>('/api/hulls?search=00042')).items.map(({ number }) => number)).toEqual(['H-1']);
  });

  it('that reads well but looks odd is taken, and what looks odd is said', async () => {
    await start('H-2');
    const { status, body } = await assign('H-2', 'TR200043K525');
    expect(status).toBe(201);
    expect(body.result['warnings']).toEqual([expect.stringContaining('Manufacturer code TR2')]);
  });

  it('that is none is refused with the position and the remedy', async () => {
    await start('H-3');
    const { status, body } = await assign('H-3', 'TRZ0004OK525');
    expect([status, body]).toMatchObject([400, { errors: [{ pointer: '/hin' }] }]);
    expect(body['detail']).toMatch(/position 8: .*O/);
    expect(await assign('H-3', 'TRZ')).toMatchObject(refusal(400, 'invalid-request', '/hin'));
    expect((await hull('H-3')).hin).toBeNull();
  });

  it('is changed only with a reason, and the hull is still found by the one it had', async () => {
    await start('H-4');
    await assign('H-4', 'TRZ00050K525');
    expect(await assign('H-4', 'TRZ00051K525')).toMatchObject(refusal(422, 'reason-missing', '/reason'));
    expect((await assign('H-4', 'TRZ00051K525', { reason: 'serial misread' })).status).toBe(201);
    expect((await hull('TRZ00050K525')).hin).toContain('00051');
    expect((await hull('H-4')).numbers).toMatchObject([
      { kind: 'hull number' },
      { kind: 'HIN', reason: null },
      { kind: 'HIN', reason: 'serial misread' },
    ]);
  });

  it('is never issued twice, neither to another hull nor to the same one again, nor as a hull number', async () => {
    for (const number of ['H-5', 'H-6']) await start(number);
    await assign('H-5', 'TRZ00060K525');
    await assign('H-5', 'TRZ00061K525', { reason: 'misread' });
    for (const [to, reason] of [
      ['H-6', undefined],
      ['H-5', 'back to the first'],
    ] as const) {
      const answer = await assign(to, 'TRZ 00060 K525', reason === undefined ? {} : { reason });
      expect(answer).toMatchObject(refusal(409, 'number-taken', '/hin'));
    }
    expect(await start('TRZ-00060-K525')).toMatchObject(refusal(409, 'number-taken', '/number'));
  });

  it('goes to one of two hulls when it is assigned to both at once', async () => {
    for (const number of ['H-7', 'H-8']) await start(number);
    const both = await Promise.all(['H-7', 'H-8'].map((number) => assign(number, 'TRZ00070K525')));
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
  });

  it('that is affixed is not changed any more', async () => {
    await start('H-9');
    const affixed = (): Promise<Answer> => shop.post('/api/hulls/H-9/life', shop.envelope({ what: 'HIN affixed' }));
    expect(await affixed()).toMatchObject(refusal(422, 'no-hin', '/what'));
    await assign('H-9', 'TRZ00080K525');
    expect((await affixed()).status).toBe(201);
    const answer = await assign('H-9', 'TRZ00081K525', { reason: 'misread' });
    expect(answer).toMatchObject(refusal(409, 'hin-affixed', '/hin'));
    expect((await hull('TRZ00080K525')).number).toBe('H-9');
    expect((await shop.get('/api/hulls/TRZ00081K525')).status).toBe(404);
  });

  it('names the hull on every route that takes a hull number', async () => {
    await start('H-10');
    await assign('H-10', 'TRZ00090K525');
    await assign('H-10', 'TRZ00091K525', { reason: 'misread' });
    await shop.startDeck('H-10-D');
    for (const hin of ['TRZ00090K525', 'TRZ-00091-K525']) {
      for (const path of ['', '/lots']) expect((await shop.get(`/api/hulls/${hin}${path}`)).status).toBe(200);
      await shop.act(`/api/hulls/${hin}/life`, { what: 'demolded' });
      const release = await shop.post(`/api/hulls/${hin}/releases`, shop.envelope());
      expect(release).toMatchObject({ status: 409, body: { type: '/problems/not-releasable' } });
    }
    await shop.join('TRZ00090K525', 'H-10-D');
    const { parts, life } = await hull('H-10');
    expect(parts.map(({ number }) => number)).toEqual(['H-10-H', 'H-10-D']);
    expect(life.map(({ what }) => what)).toEqual(['part started', 'demolded', 'demolded']);
    const shared = await shop.post('/api/shared-lots', { hulls: ['TRZ00090K525', '86-1'] });
    expect(shared.status).toBe(200);
  });
});
