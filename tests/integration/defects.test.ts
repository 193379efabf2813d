import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { DefectView, PartView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { PORT_SIDE, Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.startHull('A');
  await shop.startDeck('A-D');
});
afterAll(() => service.close());

const report = (part: string, more: Fields): Promise<Answer> =>
  shop.post(`/api/parts/${part}/defects`, shop.envelope({ kind: 'dry-spot', place: PORT_SIDE, ...more }));
const defect = (id: string): Promise<DefectView> => shop.read(`/api/defects/${id}`);
const shell = (fromTransomMm: number, girthMm: number, side = 'port') => ({
  surface: 'shell',
  side,
  fromTransomMm,
  girthMm,
});
const transom = (offsetMm: number, heightMm: number, side = 'starboard') => ({
  surface: 'transom',
  side,
  offsetMm,
  heightMm,
});

describe('the place of a defect', () => {
  it.each<[string, Fields, number, string]>([
    ['A-H', shell(0, 0, 'centreline'), 0, 'aft end, bottom, below the waterline'],
    ['A-H', shell(2_150, 1_200), 25, 'between the named zones, bottom, below the waterline'],
    ['A-H', shell(4_300, 1_275, 'starboard'), 50, 'midship, topside, below the waterline'],
    ['A-H', shell(4_300, 2_050), 50, 'midship, topside, above the waterline'],
    ['A-H', shell(8_600, 900), 100, 'fore end, topside, above the waterline'],
    ['A-H', transom(1_250, 900), 0, 'aft end, transom'],
    ['A-D', shell(2_000, 300), 25, 'between the named zones'],
  ])('on %s at %j is %d percent of the length: %s', async (part, place, percentOfLength, zone) => {
    const { status, body } = await report(part, { place });
    expect([status, body.result]).toEqual([
      201,
      { mark: expect.stringMatching(/^D\d+$/), percentOfLength, zone, asks: [] },
    ]);
    expect(await defect(body.id)).toMatchObject({ place, percentOfLength, zone, part, state: 'open' });
  });

  it.each<[string, Fields, string, string]>([
    ['A-H', shell(8_601, 10), '/place/fromTransomMm', '8600 mm'],
    ['A-H', shell(0, 1_901), '/place/girthMm', '1900 mm'],
    ['A-H', shell(6_450, 1_476), '/place/girthMm', '1475 mm'],
    ['A-H', shell(100, 5, 'centreline'), '/place/girthMm', 'Enter 0 or choose a side'],
    ['A-H', transom(1_251, 10), '/place/offsetMm', '1250 mm'],
    ['A-H', transom(10, 901), '/place/heightMm', '900 mm'],
    ['A-D', transom(10, 10), '/place/surface', 'no transom'],
    ['A-H', shell(-1, 10), '/place/fromTransomMm', ''],
    ['A-H', { surface: 'shell', fromTransomMm: 1, girthMm: 1 }, '/place/side', ''],
  ])('on %s cannot be %j: the field is named with its limit', async (part, place, pointer, limit) => {
    const answer = await report(part, { place });
    const errors = [{ pointer, detail: expect.stringContaining(limit) }];
    expect(answer).toMatchObject({ status: 400, body: { type: '/problems/invalid-request', errors } });
  });

  it('cannot be told on a part whose model has no skin for it', async () => {
    const layers = [{ code: 'H1', name: 'Hatch', materials: [{ material: 'RES-VE' }] }];
    await shop.act('/api/models/TS86/schedules', { partKind: 'hatch', version: 1, layers });
    await shop.act('/api/molds', { code: 'M-HATCH', model: 'TS86', partKind: 'hatch' });
    await shop.startDeck('HATCH-1', { kind: 'hatch', mold: 'M-HATCH' });
    const answer = await report('HATCH-1', {});
    expect(answer).toMatchObject({ status: 422, body: { type: '/problems/no-skin', errors: [{ pointer: '/place' }] } });
  });
});

describe('a defect', () => {
  it('has a kind, a layer and a size, and a blister its grade', async () => {
    const size = { lengthMm: 40, widthMm: 12.5, depthMm: 0.8 };
    const { body } = await report('A-H', { kind: 'blister', layer: 'L2', grade: '6MD', note: 'soft', ...size });
    expect(await defect(body.id)).toMatchObject({ kind: 'blister', layer: 'L2', grade: '6MD', note: 'soft', ...size });
  });

  it.each<[Fields, number, string]>([
    [{ kind: 'hole' }, 400, '/kind'],
    [{ layer: 'L9' }, 422, '/layer'],
    [{ grade: '6MD' }, 400, '/grade'],
    [{ kind: 'blister', grade: '5F' }, 400, '/grade'],
    [{ lengthMm: 0 }, 400, '/lengthMm'],
    [{ depthMm: -1 }, 400, '/depthMm'],
  ])('with %j is refused with the field', async (wrong, status, pointer) => {
    expect(await report('A-H', wrong)).toMatchObject({ status, body: { errors: [{ pointer }] } });
  });

  it('gets the next mark on its part, also when twelve are reported at once, and none is used twice', async () => {
    await shop.startHull('MARKS');
    const answers = await Promise.all(Array.from({ length: 12 }, () => report('MARKS-H', {})));
    const marks = answers.map(({ body }) => String(body.result['mark']));
    expect([...marks].sort()).toEqual(Array.from({ length: 12 }, (_, i) => `D${i + 1}`).sort());
    await shop.correct(answers.find(({ body }) => body.result['mark'] === 'D12')?.body.id as string);
    expect((await report('MARKS-H', {})).body.result['mark']).toBe('D13');
    const listed = (await shop.read<PartView>('/api/parts/MARKS-H')).defects.map(({ mark }) => mark);
    expect(listed).toEqual([...Array.from({ length: 11 }, (_, i) => `D${i + 1}`), 'D13']);
  });

  it('that is corrected in place and kind keeps its mark; its zone follows, and any version names it', async () => {
    const first = await report('A-H', { kind: 'blister', layer: 'L1', grade: '8F' });
    const set = { kind: 'defect', defectKind: 'air-bubble', layer: 'L2', place: shell(8_170, 0), depthMm: 3 };
    const second = await shop.correct(first.body.id, set);
    for (const id of [first.body.id, second]) {
      const found = await defect(id);
      expect(found).toMatchObject({ mark: first.body.result['mark'], kind: 'air-bubble', layer: 'L2', depthMm: 3 });
      expect(found).toMatchObject({ percentOfLength: 95, zone: 'fore end, bottom, below the waterline' });
    }
    const refused = (wrong: Fields): Promise<Answer> =>
      shop.post(
        '/api/corrections',
        shop.envelope({ corrects: second, reason: 'x', set: { kind: 'defect', ...wrong } }),
      );
    for (const [wrong, pointer] of [
      [{ place: shell(9_000, 0) }, '/set/place/fromTransomMm'],
      [{ defectKind: 'hole' }, '/set/defectKind'],
      [{ layer: 'L9' }, '/set/layer'],
    ] as const)
      expect((await refused(wrong)).body).toMatchObject({ errors: [{ pointer }] });
  });

  it('that is not there is not found, whatever its id looks like', async () => {
    for (const id of ['nothing', '00000000-0000-4000-8000-000000000000'])
      expect(await shop.get(`/api/defects/${id}`)).toMatchObject({
        status: 404,
        body: { type: '/problems/not-found' },
      });
  });
});

const dispose = (about: string, more: Fields): Promise<Answer> =>
  shop.post('/api/dispositions', shop.envelope({ of: 'defect', about, disposition: 'repair', reason: 'x', ...more }));
const asIs = (concession: string) => ({ disposition: 'use as is', concession });

describe('a disposition', () => {
  it('to use as is needs the number of a concession, which is used once', async () => {
    const [one, two] = [await shop.defect('A-H'), await shop.defect('A-H')];
    const without = await dispose(one, { disposition: 'use as is' });
    expect(without).toMatchObject({ status: 400, body: { errors: [{ pointer: '/concession' }] } });
    expect((await dispose(one, asIs('C-1'))).status).toBe(201);
    expect(await defect(one)).toMatchObject({ state: 'concession', disposition: 'use as is', concession: 'C-1' });
    const again = await dispose(two, asIs('C-1'));
    expect(again).toMatchObject({ status: 409, body: { type: '/problems/concession-taken' } });
    expect(again.body).toMatchObject({ errors: [{ pointer: '/concession' }] });
    expect((await defect(two)).state).toBe('open');
  });

  it('is made once, also when two decide at once, and made anew when it was withdrawn', async () => {
    const id = await shop.defect('A-H');
    const both = await Promise.all([dispose(id, { disposition: 'scrap' }), dispose(id, asIs('C-2'))]);
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
    expect(both.find(({ status }) => status === 409)?.body).toMatchObject({
      type: '/problems/disposed-already',
      errors: [{ pointer: '/about' }],
    });
    await shop.correct(both.find(({ status }) => status === 201)?.body.id as string);
    expect(await defect(id)).toMatchObject({ state: 'open', disposition: null });
    expect((await dispose(id, asIs('C-3'))).status).toBe(201);
  });

  it('stays with a defect that is corrected', async () => {
    const id = await shop.defect('A-H');
    await dispose(id, asIs('C-4'));
    const second = await shop.correct(id, { kind: 'defect', note: 'nearer the bow' });
    expect((await defect(second)).concession).toBe('C-4');
    expect((await dispose(second, {})).status).toBe(409);
  });

  it.each(['reading', 'nonconformity', 'defect'])('about a %s that is not there is refused', async (of) => {
    const about = of === 'defect' ? '00000000-0000-4000-8000-000000000000' : await shop.defect('A-H');
    expect(await dispose(about, { of })).toMatchObject({ status: 422, body: { errors: [{ pointer: '/about' }] } });
  });
});
