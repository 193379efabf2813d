import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { DefectView, HullView, PartView, ReachPage, RepairView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('R', 'RES-VE');
  await shop.receive('M', 'MAT-450');
});
afterAll(() => service.close());

let hulls = 0;

/** A defect on a new hull. */
const found = async (): Promise<{ hull: string; part: string; defect: string }> => {
  const hull = `H-${(hulls += 1)}`;
  await shop.startHull(hull);
  return { hull, part: `${hull}-H`, defect: await shop.defect(`${hull}-H`) };
};

const defect = (id: string): Promise<DefectView> => shop.read(`/api/defects/${id}`);
const repairs = async (part: string): Promise<readonly RepairView[]> =>
  (await shop.read<PartView>(`/api/parts/${part}`)).repairs;

const record = (part: string, defects: readonly string[], more: Fields = {}): Promise<Answer> =>
  shop.post(
    `/api/parts/${part}/repairs`,
    shop.envelope({ defects, procedure: 'Ground out 12:1.', doneBy: ['PAT-1'], ...more }),
  );

const judge = (repair: string, badge: string, more: Fields = { accepted: true }): Promise<Answer> =>
  shop.post(`/api/repairs/${repair}/acceptances`, shop.envelope({ enteredBy: badge, ...more }));

const refusal = (status: number, code: string, pointer: string) => ({
  status,
  body: { type: `/problems/${code}`, errors: [{ pointer }] },
});

const reach = async (lot: string): Promise<Record<string, number | null>> =>
  Object.fromEntries(
    (await shop.read<ReachPage>(`/api/lots/${lot}/hulls`)).items.map((item) => [item.hull ?? '', item.kg]),
  );

describe('a repair', () => {
  it('is recorded as it was done: grind-out, taper, plies, what was used, and which defects it puts right', async () => {
    const { hull, part, defect: one } = await found();
    const two = await shop.defect(part);
    const grindOutMm = { lengthMm: 300, widthMm: 200, depthMm: 2.5 };
    const work = { taperRatio: 12, grindOutMm, plies: ['mat 450', 'mat 450'], doneBy: ['PAT-1', 'LAM-1'] };
    await shop.receive('R-REP', 'RES-VE');
    const { status, body } = await record(part, [two, one], { ...work, used: [{ lot: 'R-REP', amount: kg(1.5) }] });
    expect([status, body.result]).toEqual([
      201,
      {
        ...{ mark: 'R1', kg: 1.5, nonconformities: [] },
        warnings: ['Lot R of the same material is to be used before lot R-REP and is still in stock.'],
      },
    ]);
    await shop.act(`/api/repairs/${body.id}/used`, { used: [{ lot: 'R-REP', amount: kg(0.5) }] });
    const reading = { what: 'Barcol hardness', unit: 'Barcol', spots: [{ value: 38 }] };
    const read = await shop.receipt(`/api/repairs/${body.id}/readings`, reading);
    expect(read.result).toMatchObject({ spots: [{ spot: 1, verdict: 'no limit' }] });
    const [repair] = await repairs(part);
    expect(repair).toMatchObject({ mark: 'R1', defects: ['D1', 'D2'], taperRatio: 12, grindOutMm, plies: work.plies });
    expect(repair).toMatchObject({ doneBy: ['LAM-1', 'PAT-1'], acceptance: null, readings: [{ value: '38' }] });
    expect(await reach('R-REP')).toEqual({ [hull]: 2 });
    for (const id of [one, two])
      expect(await defect(id)).toMatchObject({ state: 'repair to be accepted', repairs: ['R1'] });
  });

  it('puts a defect right only when a person who did not do it accepts it', async () => {
    const { hull, part, defect: id } = await found();
    const repair = await shop.repair(part, [id], { doneBy: ['PAT-1', 'INS-1'] });
    for (const maker of ['PAT-1', 'INS-1'])
      expect(await judge(repair, maker)).toMatchObject(refusal(409, 'accepter-is-maker', '/enteredBy'));
    expect((await judge(repair, 'QUA-1')).body.result).toEqual({ accepted: true });
    expect((await defect(id)).state).toBe('repaired');
    expect((await repairs(part))[0]?.acceptance).toMatchObject({ accepted: true, by: 'QUA-1', identity: 'proved' });
    const { release } = await shop.read<HullView>(`/api/hulls/${hull}`);
    expect(release.inTheWay.map(({ rule }) => rule)).not.toContain('defect-open');
  });

  it('that is refused, which needs a word why, leaves the defect open until another is accepted', async () => {
    const { hull, part, defect: id } = await found();
    const first = await shop.repair(part, [id]);
    expect(await judge(first, 'INS-1', { accepted: false })).toMatchObject(refusal(400, 'invalid-request', '/note'));
    await shop.judge(first, false);
    expect(await defect(id)).toMatchObject({ state: 'open', repairs: ['R1'] });
    const { release } = await shop.read<HullView>(`/api/hulls/${hull}`);
    expect(release.inTheWay.map(({ rule }) => rule)).toContain('defect-open');
    const second = await shop.repair(part, [id]);
    expect((await defect(id)).state).toBe('repair to be accepted');
    await shop.judge(second, true);
    expect(await defect(id)).toMatchObject({ state: 'repaired', repairs: ['R1', 'R2'] });
  });

  it('is judged once, also when two judge it at once, and anew when the judgement was withdrawn', async () => {
    const { part, defect: id } = await found();
    const repair = await shop.repair(part, [id]);
    const both = await Promise.all([judge(repair, 'INS-1'), judge(repair, 'QUA-1')]);
    expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
    const refused = both.find(({ status }) => status === 409);
    expect(refused?.body).toMatchObject({ type: '/problems/judged-already' });
    await shop.correct(both.find(({ status }) => status === 201)?.body.id as string);
    expect((await defect(id)).state).toBe('repair to be accepted');
    expect((await judge(repair, 'QUA-1')).status).toBe(201);
  });

  it('gets the next mark on its part, also when eight are recorded at once', async () => {
    const { part, defect: id } = await found();
    const answers = await Promise.all(Array.from({ length: 8 }, () => record(part, [id])));
    expect(answers.map(({ body }) => String(body.result['mark'])).sort()).toEqual(
      Array.from({ length: 8 }, (_, i) => `R${i + 1}`),
    );
  });

  it('with a lot that was held is kept as it was done, and a nonconformity is opened', async () => {
    const { part, defect: id } = await found();
    await shop.receive('R-HELD', 'RES-VE', { state: 'quarantined' });
    const { body } = await record(part, [id], { used: [{ lot: 'R-HELD', amount: kg(1) }] });
    expect(body.result).toMatchObject({ kg: 1, nonconformities: [{ rule: 'lot-not-released' }] });
    const { nonconformities } = await shop.read<PartView>(`/api/parts/${part}`);
    expect(nonconformities).toMatchObject([{ rule: 'lot-not-released', disposition: null }]);
  });

  it('that was never done is withdrawn with what it used, and the defect is open again', async () => {
    const { hull, part, defect: id } = await found();
    await shop.receive('R-NOT', 'RES-VE');
    const repair = await shop.repair(part, [id], { used: [{ lot: 'R-NOT', amount: kg(1) }] });
    await shop.judge(repair, true);
    const rests = await shop.post('/api/corrections', shop.envelope({ corrects: id, reason: 'no defect' }));
    expect(rests).toMatchObject(refusal(409, 'defect-is-repaired', '/corrects'));
    expect(await reach('R-NOT')).toEqual({ [hull]: 1 });
    await shop.correct(repair);
    expect(await reach('R-NOT')).toEqual({});
    expect(await defect(id)).toMatchObject({ state: 'open', repairs: [] });
    expect(await repairs(part)).toEqual([]);
    await shop.correct(id);
    expect((await shop.get(`/api/defects/${id}`)).status).toBe(404);
  });

  it('names a defect by the id of any of its versions, in capitals too', async () => {
    const { part, defect: id } = await found();
    const second = await shop.correct(id, { kind: 'defect', note: 'deeper' });
    expect((await record(part, [id.toUpperCase()])).status).toBe(201);
    expect((await record(part, [second])).status).toBe(201);
    expect((await defect(id)).repairs).toEqual(['R1', 'R2']);
  });

  it('is refused with each defect that is not one of this part', async () => {
    const { part, defect: id } = await found();
    const other = await found();
    const nobody = '00000000-0000-4000-8000-000000000000';
    const { status, body } = await record(part, [id, other.defect, nobody]);
    expect([status, body]).toMatchObject([400, { errors: [{ pointer: '/defects/1' }, { pointer: '/defects/2' }] }]);
    expect(await record(part, [id, id])).toMatchObject(refusal(422, 'defect-twice', '/defects'));
    expect(await repairs(part)).toEqual([]);
  });

  it.each<[Fields, number, string]>([
    [{ defects: [] }, 400, '/defects'],
    [{ procedure: '' }, 400, '/procedure'],
    [{ doneBy: [] }, 400, '/doneBy'],
    [{ doneBy: ['PAT-1', 'X'] }, 403, '/doneBy/1'],
    [{ taperRatio: 0 }, 400, '/taperRatio'],
    [{ grindOutMm: { lengthMm: 1, widthMm: 1 } }, 400, '/grindOutMm/depthMm'],
    [{ used: [{ lot: 'NIX', amount: kg(1) }] }, 422, '/used/0/lot'],
    [{ used: [{ lot: 'R', amount: { quantity: 1, unit: 'pc', basis: 'weighed' } }] }, 422, '/used/0/amount/unit'],
  ])('with %j is refused with the field', async (wrong, status, pointer) => {
    const { part, defect: id } = await found();
    expect(await record(part, [id], wrong)).toMatchObject({ status, body: { errors: [{ pointer }] } });
    expect(await defect(id)).toMatchObject({ state: 'open', repairs: [] });
  });
});
