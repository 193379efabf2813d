import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { LotPage, LotView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const lot = (code: string): Promise<LotView> => shop.read(`/api/lots/${code}`);

const delivery = (code: string, more: Fields = {}): Fields =>
  shop.envelope({
    code,
    material: 'RES-VE',
    supplier: 'Aldermoor',
    supplierLot: `S-${code}`,
    amount: kg(200),
    ...more,
  });

describe('a lot that is received', () => {
  it('is quarantined, with its certificate, until somebody says otherwise', async () => {
    const certificate = { viscosity: 450, colour: 'water white' };
    const answer = await shop.post('/api/lots', delivery('R-100', { certificate }));
    expect(answer).toMatchObject({ status: 201, body: { result: { code: 'R-100', kg: 200, nonconformities: [] } } });
    expect(await lot('R-100')).toMatchObject({ origin: 'received', state: 'quarantined', certificate, role: 'resin' });
  });

  it.each<[string, { madeOn?: string; expiresOn?: string }, string | null]>([
    ['made on a day, of a material with a shelf life of 90 days', { madeOn: '2025-12-01' }, '2026-03-01'],
    ['with a last day of its own', { madeOn: '2025-12-01', expiresOn: '2026-02-01' }, '2026-02-01'],
    ['without the day on which it was made', {}, null],
  ])('%s, has as its last day of use %s', async (_what, dates, expiresOn) => {
    const code = `G-${String(expiresOn)}`;
    expect((await shop.post('/api/lots', delivery(code, { material: 'GEL-W', ...dates }))).status).toBe(201);
    expect(await lot(code)).toMatchObject({ madeOn: dates.madeOn ?? null, expiresOn });
  });

  it.each([
    ['RES-VE', { quantity: 100, unit: 'L', basis: 'metered' }, 110],
    ['MAT-450', { quantity: 200, unit: 'm2', basis: 'as scheduled' }, 90],
    ['PASTE', { quantity: 3, unit: 'pc', basis: 'weighed' }, 36],
    ['RES-PE', { quantity: 100, unit: 'lb', basis: 'weighed' }, 45.359237],
    ['RES-PE', { quantity: 1.5, unit: 't', basis: 'weighed' }, 1_500],
  ])('of %s, %j, weighs %d kg, and keeps what was entered', async (material, amount, expected) => {
    const code = `U-${amount.unit}`;
    await shop.receive(code, material, { amount });
    const { quantity, unit, basis, kg: weight } = (await lot(code)).amount;
    expect({ quantity, unit, basis }).toEqual({ ...amount, quantity: String(amount.quantity) });
    expect(weight).toBeCloseTo(expected, 9);
  });

  it.each([
    ['RES-PE', 'L', 'register the density'],
    ['RES-VE', 'm2', 'register the areal mass'],
    ['RES-VE', 'pc', 'register the piece mass'],
    ['RES-VE', 'C', 'give a mass, a volume, an area or pieces'],
  ])('of %s in %s is refused with the field and the remedy: %s', async (material, unit, remedy) => {
    const amount = { quantity: 1, unit, basis: 'weighed' };
    const { status, body } = await shop.post('/api/lots', delivery('NO', { material, amount }));
    expect([status, body]).toMatchObject([422, { type: '/problems/unit-without-conversion' }]);
    expect(body['errors']).toEqual([{ pointer: '/amount/unit', detail: expect.stringContaining(remedy) }]);
  });

  it.each([
    [{ amount: kg(0) }, '/amount/quantity'],
    [{ amount: kg(-3) }, '/amount/quantity'],
    [{ amount: { quantity: '1e3', unit: 'kg', basis: 'weighed' } }, '/amount/quantity'],
    [{ amount: { quantity: 1, unit: 'ounce', basis: 'weighed' } }, '/amount/unit'],
    [{ amount: { quantity: 1, unit: 'kg', basis: 'guessed' } }, '/amount/basis'],
    [{ madeOn: '2026-02-30' }, '/madeOn'],
    [{ madeOn: '2026-02-01', expiresOn: '2026-01-01' }, '/expiresOn'],
    [{ supplierLot: ' ' }, '/supplierLot'],
    [{ state: 'held' }, '/state'],
  ])('with %j is refused at %s', async (wrong, pointer) => {
    const answer = await shop.post('/api/lots', delivery('NO', wrong));
    expect(answer).toMatchObject({ status: 400, body: { type: '/problems/invalid-request', errors: [{ pointer }] } });
  });

  it('of a material nobody registered is refused, with what to do', async () => {
    const answer = await shop.post('/api/lots', delivery('NO', { material: 'NIX' }));
    const errors = [{ pointer: '/material', detail: expect.stringContaining('record it first') }];
    expect(answer).toMatchObject({ status: 422, body: { type: '/problems/not-found', errors } });
    expect((await shop.get('/api/lots/NO')).status).toBe(404);
  });

  it('has its code alone: of two at once with one code, one is kept and the other is told', async () => {
    const both = await Promise.all([1, 2].map(() => shop.post('/api/lots', delivery('TWICE'))));
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
    const refused = both.find(({ status }) => status === 409);
    expect(refused?.body).toMatchObject({ type: '/problems/code-taken', errors: [{ pointer: '/code' }] });
  });
});

describe('the state of a lot', () => {
  it('is the newest that has happened, however late it was entered, and every state stays with its reason', async () => {
    await shop.receive('ST-1', 'RES-VE', { state: 'quarantined' });
    const early = shop.tick();
    await shop.setState('ST-1', 'released', { reason: 'certificate checked' });
    expect((await lot('ST-1')).state).toBe('released');
    await shop.setState('ST-1', 'held', { reason: 'slow to gel' });
    await shop.setState('ST-1', 'rejected', { reason: 'entered late', happenedAt: early });
    const { state, states } = await lot('ST-1');
    expect(state).toBe('held');
    expect(states.map((each) => [each.state, each.reason])).toEqual([
      ['quarantined', 'received'],
      ['rejected', 'entered late'],
      ['released', 'certificate checked'],
      ['held', 'slow to gel'],
    ]);
  });

  it('that was entered by mistake is withdrawn, and the one before stands again', async () => {
    await shop.receive('ST-2', 'RES-VE');
    const mistake = await shop.setState('ST-2', 'held');
    await shop.correct(mistake);
    expect((await lot('ST-2')).state).toBe('released');
  });

  it('cannot be said of a lot that is not there', async () => {
    const answer = await shop.post('/api/lots/NIX/states', shop.envelope({ state: 'held', reason: 'x' }));
    expect(answer).toMatchObject({ status: 404, body: { type: '/problems/not-found' } });
  });
});

describe('the list of lots', () => {
  const page = (query: string): Promise<LotPage> => shop.read(`/api/lots?${query}`);

  it('keeps its order while lots are added: every lot that was there comes once', async () => {
    const codes = Array.from({ length: 23 }, (_, i) => `P-${String(i).padStart(2, '0')}`);
    // Some in one minute, so that their order hangs on the id.
    const at = shop.tick();
    for (const [i, code] of codes.entries()) await shop.receive(code, 'PASTE', i % 3 === 0 ? { happenedAt: at } : {});
    const seen: string[] = [];
    let cursor: string | null = '';
    for (let turn = 0; cursor !== null; turn += 1) {
      const found: LotPage = await page(`search=P-&limit=5${cursor === '' ? '' : `&cursor=${cursor}`}`);
      seen.push(...found.items.map((item) => item.code).filter((code) => !code.startsWith('P-late')));
      cursor = found.next;
      await shop.receive(`P-late-${turn}`, 'PASTE');
    }
    expect([...seen].sort()).toEqual(codes);
  });

  it('is filtered by material, state, origin and any part of a number, whatever its case', async () => {
    await shop.receive('F-1', 'GEL-W', { supplierLot: 'Quay-77', state: 'quarantined' });
    await shop.mix('F-2', [{ lot: 'F-1', amount: kg(2) }]);
    const codes = async (query: string): Promise<string[]> => (await page(query)).items.map(({ code }) => code);
    expect(await codes('search=qUAY-7')).toEqual(['F-1']);
    expect(await codes('search=F-&origin=mixed')).toEqual(['F-2']);
    expect(await codes('search=F-&state=quarantined&material=GEL-W')).toEqual(['F-1']);
    expect(await codes('search=F-1&material=PASTE')).toEqual([]);
    expect(await codes('search=%25')).toEqual([]);
  });

  it.each([
    ['limit=0', '/limit'],
    ['limit=501', '/limit'],
    ['state=lost', '/state'],
    ['cursor=zzz', '/cursor'],
    [`cursor=${Buffer.from('["today","me"]').toString('base64url')}`, '/cursor'],
    ['search=%00', ''],
  ])('refuses %s at %s', async (query, pointer) => {
    expect(await shop.get(`/api/lots?${query}`)).toMatchObject({ status: 400, body: { errors: [{ pointer }] } });
  });
});
