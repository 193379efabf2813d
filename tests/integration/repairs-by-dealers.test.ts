import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { DefectView, OwnRepairs, PartView } from '@hull-record/contracts';
import { randomUUID } from 'node:crypto';
import sharp from 'sharp';
import { statementsOf } from '../support/access/statements.js';
import { startService, type RunningService } from '../support/service.js';
import { PORT_SIDE, Shop, type Answer, type Fields } from '../support/shop.js';
import { REPAIRED } from '../support/write-samples-claims.js';

let service: RunningService;
let shop: Shop;
let photo: Buffer;

/** Two dealers with hulls of their own. */
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/dealers', { code: 'SAL', name: 'Saltmere Boats', place: 'Saltmere' });
  for (const [badge, dealer] of [
    ['D-OURS', 'NLM'],
    ['D-THEIRS', 'SAL'],
  ] as const)
    await shop.act('/api/people', { badge, name: 'Desk', roles: ['dealer'], dealer });
  for (const [number, dealer] of [
    ['OURS', 'NLM'],
    ['OURS-2', 'NLM'],
    ['THEIRS', 'SAL'],
  ] as const) {
    await shop.startHull(number);
    await shop.act(`/api/hulls/${number}/life`, { what: 'at dealer', dealer });
  }
  photo = await sharp({ create: { width: 9, height: 7, channels: 3, background: '#123456' } })
    .jpeg()
    .toBuffer();
});
afterAll(() => service.close());

const by = (badge: string, fields: Fields = {}): Fields => shop.envelope({ ...REPAIRED, enteredBy: badge, ...fields });
const pathOf = (number: string, rest = ''): string => `/api/own-hulls/${number}/outside-repairs${rest}`;
const ask = async (badge: string, path: string): Promise<{ status: number; body: unknown }> => {
  const answer = await fetch(`${service.url}${path}`, { headers: await service.signedIn(badge) });
  return { status: answer.status, body: (await answer.json()) as unknown };
};
const listed = async (badge: string, number: string): Promise<OwnRepairs> =>
  (await ask(badge, pathOf(number))).body as OwnRepairs;
const told = ({ status, body }: { status: number; body: unknown }, number: string): string =>
  `${status} ${JSON.stringify(body)}`.replaceAll(number, 'N').replace(/"instance":"[^"]*"/, '');

describe('a dealer who reports an outside repair', () => {
  it('has it recorded once with all that was told, its spot a defect, and the plant sees who reported it', async () => {
    const sent = by('D-OURS');
    const first = await shop.post(pathOf('OURS'), sent);
    expect(first).toMatchObject({
      status: 201,
      body: { result: { mark: 'R1', part: 'OURS-H', defects: ['D1'], warnings: [] } },
    });
    expect(await shop.post(pathOf('OURS'), sent)).toMatchObject({ status: 200, body: { id: first.body.id } });
    expect((await shop.post(pathOf('OURS'), { ...sent, note: 'another' })).status).toBe(409);

    const { repairs, defects } = await shop.read<PartView>('/api/parts/OURS-H');
    expect(repairs).toHaveLength(1);
    expect(repairs[0]).toMatchObject({
      ...{ id: first.body.id, defects: ['D1'], taperRatio: 12.5, plies: ['mat 450', 'mat 450'], doneBy: [] },
      ...{ grindOutMm: REPAIRED['grindOutMm'], geometry: REPAIRED['geometry'], used: [], acceptance: null },
      outside: {
        ...{ at: 'Yard of the dealer', toldBy: 'work sheet 118', when: '2026-01-05' },
        ...{ material: 'vinyl ester of the yard', evidence: 'work sheet, photos' },
      },
      ...{ reportedBy: 'NLM', note: 'struck a piling', photos: [] },
    });
    expect(defects).toMatchObject([{ mark: 'D1', kind: 'gouge', state: 'repair to be accepted', note: 'a piling' }]);
  });

  it('answers open defects of the hull, adds photos, and sees what the plant said of it', async () => {
    const defect = await shop.defect('OURS-2-H');
    const before = await listed('D-OURS', 'OURS-2');
    expect(before).toMatchObject({
      ...{ repairs: [], parts: [{ number: 'OURS-2-H', kind: 'hull molding', skin: { lengthMm: expect.any(Number) } }] },
      openDefects: [{ id: defect, mark: 'D1', part: 'OURS-2-H', kind: 'dry-spot', state: 'open' }],
    });
    const { id } = (await shop.post(pathOf('OURS-2'), by('D-OURS', { defects: [defect], spots: [] }))).body;
    const form = shop.envelope({ enteredBy: 'D-OURS', shows: 'finished' });
    const added = await shop.postPhoto(pathOf('OURS-2', `/${id}/photos`), form, photo);
    expect(added.status).toBe(201);
    expect((await shop.postPhoto(pathOf('OURS-2', `/${id}/photos`), form, photo)).status).toBe(200);
    const state = async (): Promise<unknown> => (await listed('D-OURS', 'OURS-2')).repairs.map((each) => each.state);
    expect(await state()).toEqual(['to be judged']);
    await shop.judge(id, true, { note: 'looked at by our own man' });
    expect(await state()).toEqual(['accepted']);
    expect((await shop.read<DefectView>(`/api/defects/${defect}`)).state).toBe('repaired');
    await shop.act(`/api/repairs/${id}/re-inspections`, { enteredBy: 'INS-1', passed: false, note: 'a halo' });
    expect(await state()).toEqual(['failed when inspected again']);
    const { repairs } = await listed('D-OURS', 'OURS-2');
    expect(repairs).toMatchObject([
      { own: true, note: 'struck a piling', photos: [{ id: added.body.id, shows: 'finished', redactedOn: null }] },
    ]);
    expect(JSON.stringify(repairs)).not.toMatch(/own man|halo|INS-1/);

    const shown = await fetch(`${service.url}${pathOf('OURS-2', `/${id}/photos/${added.body.id}`)}`, {
      headers: await service.signedIn('D-OURS'),
    });
    expect([shown.status, shown.headers.get('content-type')]).toEqual([200, 'image/jpeg']);
    const atThePlant = await fetch(`${service.url}/api/photos/${added.body.id}`, {
      headers: await service.signedIn('INS-1'),
    });
    expect(atThePlant.status).toBe(200);
    expect((await shop.read<PartView>('/api/parts/OURS-2-H')).repairs[0]?.photos).toMatchObject([
      { id: added.body.id, shows: 'finished', originalSha256: added.body.result['originalSha256'] },
    ]);
  });

  it('judges nothing, and uses no lot of the plant', async () => {
    const more = await shop.post(pathOf('OURS'), by('D-OURS', { used: [{ lot: 'GEL' }], doneBy: ['PAT-1'] }));
    expect(more).toMatchObject({ status: 400, body: { errors: [{ pointer: '/used' }, { pointer: '/doneBy' }] } });
    const { id } = (await shop.post(pathOf('OURS'), by('D-OURS', {}))).body;
    const judged = await shop.post(
      `/api/repairs/${id}/acceptances`,
      shop.envelope({ enteredBy: 'D-OURS', accepted: true }),
    );
    expect(judged).toMatchObject({ status: 403, body: { type: '/problems/not-allowed' } });
    const part = await shop.read<PartView>('/api/parts/OURS-H');
    expect(part.repairs.find((each) => each.id === id)).toMatchObject({ used: [], doneBy: [], acceptance: null });
  });

  it.each([
    ['no defect and no spot', { spots: [] }, 400, '/defects'],
    ['a defect of another hull', { defects: ['{theirs}'] }, 400, '/defects/0'],
    ['a part of another hull', { part: 'THEIRS-H' }, 422, '/part'],
    ['a kind that is none', { spots: [{ kind: 'hole', place: PORT_SIDE }] }, 400, '/spots/0/kind'],
    ['a grade of no blister', { spots: [{ kind: 'gouge', grade: '6M', place: PORT_SIDE }] }, 400, '/spots/0/grade'],
    [
      'a place off the hull',
      { spots: [{ kind: 'gouge', place: { ...PORT_SIDE, fromTransomMm: 99_000 } }] },
      400,
      '/spots/0/place/fromTransomMm',
    ],
    ['a spot without a place', { spots: [{ kind: 'gouge' }] }, 400, '/spots/0/place'],
    ['no day', { outside: { at: 'Yard', toldBy: 'sheet' } }, 400, '/outside/doneOn'],
    ['a day to come', { outside: { at: 'Yard', toldBy: 'sheet', doneOn: '2027-08-01' } }, 400, '/outside/doneOn'],
    [
      'a day before it was begun',
      { outside: { at: 'Yard', toldBy: 'sheet', doneOn: '2026-01-03' } },
      400,
      '/outside/doneOn',
    ],
    ['nobody from whom it is known', { outside: { at: 'Yard', doneOn: '2026-01-01' } }, 400, '/outside/toldBy'],
    ['nothing that was done', { procedure: ' ' }, 400, '/procedure'],
    ['half of a structural repair', { geometry: { originalMm: 6 } }, 400, '/geometry/damageDepthMm'],
  ] as const)('is refused %s, with the field named, and nothing is kept', async (_what, fields, status, pointer) => {
    const theirs = (await shop.read<PartView>('/api/parts/THEIRS-H')).defects[0]?.id ?? (await shop.defect('THEIRS-H'));
    const count = async (): Promise<number> => (await shop.read<PartView>('/api/parts/OURS-H')).repairs.length;
    const before = await count();
    const sent = JSON.parse(JSON.stringify(by('D-OURS', fields)).replace('{theirs}', theirs)) as Fields;
    const { status: got, body } = await shop.post(pathOf('OURS'), sent);
    expect([got, (body as unknown as { errors: { pointer: string }[] }).errors[0]?.pointer]).toEqual([status, pointer]);
    expect(await count()).toBe(before);
  });
});

describe('a hull of another dealer', () => {
  it('is answered as none, by as many statements, and nothing is recorded', async () => {
    const sent = async (number: string): Promise<{ told: string; statements: number }> => {
      const { result, sql } = await statementsOf<Answer>(service.db, () =>
        shop.post(pathOf(number), by('D-OURS', { id: randomUUID() })),
      );
      return { told: told(result, number), statements: sql.length };
    };
    const theirs = await sent('THEIRS');
    expect(theirs).toEqual(await sent('NO-SUCH'));
    expect(theirs.told).toMatch(/^404.*There is no hull N\./);
    expect(told(await ask('D-OURS', pathOf('THEIRS')), 'THEIRS')).toEqual(
      told(await ask('D-OURS', pathOf('NO-SUCH')), 'NO-SUCH'),
    );
    expect((await listed('D-THEIRS', 'THEIRS')).repairs).toEqual([]);
  });

  it('takes no photo, and shows none, of a repair that another reported, as of one that is not there', async () => {
    const { id } = (await shop.post(pathOf('THEIRS'), by('D-THEIRS'))).body;
    const form = (badge: string): Fields => shop.envelope({ enteredBy: badge, shows: 'before' });
    const added = await shop.postPhoto(pathOf('THEIRS', `/${id}/photos`), form('D-THEIRS'), photo);
    expect(added.status).toBe(201);
    const none = randomUUID();
    const add = (repair: string): Promise<Answer> =>
      shop.postPhoto(pathOf('OURS', `/${repair}/photos`), form('D-OURS'), photo);
    expect(told(await add(id), id)).toEqual(told(await add(none), none));
    const show = (number: string, repair: string) =>
      ask('D-OURS', pathOf(number, `/${repair}/photos/${added.body.id}`));
    expect(told(await show('OURS', id), id)).toEqual(told(await show('OURS', none), none));
    expect((await show('THEIRS', id)).status).toBe(404);
  });
});

describe('a hull that went to another dealer', () => {
  it('is closed to the one who lost it, also by a correction; the other sees the repair without what was noted', async () => {
    await shop.startHull('WENT');
    const life = await shop.act('/api/hulls/WENT/life', { what: 'at dealer', dealer: 'NLM' });
    const { id } = (await shop.post(pathOf('WENT'), by('D-OURS'))).body;
    const form = (badge: string): Fields => shop.envelope({ enteredBy: badge, shows: 'before' });
    await shop.postPhoto(pathOf('WENT', `/${id}/photos`), form('D-OURS'), photo);
    await shop.correct(life, { kind: 'life fact', dealer: 'SAL' });
    expect((await ask('D-OURS', pathOf('WENT'))).status).toBe(404);
    expect((await shop.post(pathOf('WENT'), by('D-OURS'))).status).toBe(404);
    expect((await shop.postPhoto(pathOf('WENT', `/${id}/photos`), form('D-OURS'), photo)).status).toBe(404);
    expect((await listed('D-THEIRS', 'WENT')).repairs).toMatchObject([
      {
        ...{ id, own: false, at: 'Yard of the dealer', material: 'vinyl ester of the yard', when: '2026-01-05' },
        ...{ toldBy: null, evidence: null, note: null, photos: [] },
      },
    ]);
    expect((await shop.postPhoto(pathOf('WENT', `/${id}/photos`), form('D-THEIRS'), photo)).status).toBe(404);
  });
});
