import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { CaseAnswer, CasePage, CaseView, LookAgain, LookView } from '@hull-record/contracts';
import { looked } from '../support/looked.js';
import { outOfOrder } from '../support/papers/paper.js';
import { readPaper } from '../support/papers/read-paper.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, PORT_SIDE, Shop, type Fields } from '../support/shop.js';
import { FILED } from '../support/write-samples-claims.js';
import { FREEZE } from '../support/write-samples-cases.js';

let service: RunningService;
let shop: Shop;

/** 24 hulls: the first eight with BAD in the skin coat, the first twelve with a mat of the same weeks. Six blister. */
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  for (const lot of ['BAD', 'GOOD-1', 'GOOD-2']) await shop.receive(lot, 'RES-VE');
  for (const lot of ['MAT-A', 'MAT-B', 'LATER']) await shop.receive(lot, lot === 'LATER' ? 'RES-VE' : 'MAT-450');
  for (let i = 0; i < 24; i += 1) {
    await shop.startHull(`H${i}`);
    const resin = i < 8 ? 'BAD' : i < 16 ? 'GOOD-1' : 'GOOD-2';
    const share =
      i === 7
        ? [
            { lot: 'BAD', amount: kg(0.6) },
            { lot: 'GOOD-1', amount: kg(19.4) },
          ]
        : [{ lot: resin, amount: kg(20) }];
    await shop.layer(`H${i}`, 'L2', [...share, { lot: i < 12 ? 'MAT-A' : 'MAT-B', amount: kg(9) }]);
    if (i === 23) continue;
    const happenedAt = `2026-02-${String(i + 1).padStart(2, '0')}T15:00:00Z`;
    await shop.act(`/api/hulls/H${i}/life`, { what: 'left the place of manufacture', happenedAt });
  }
  for (const i of [0, 1, 2, 3, 4, 5]) await claim(i, `2026-0${i % 3 === 0 ? 6 : 7}-1${i}`);
  await claim(20, '2026-07-20', { foundBy: 'inspection of a hold' });
  await claim(23, '2026-07-21');
}, 240_000);
afterAll(() => service.close());

const claim = async (i: number, on: string, more: Fields = {}): Promise<void> => {
  const happenedAt = `${on}T12:00:00Z`;
  const { id } = await shop.receipt(`/api/hulls/H${i}/claims`, {
    ...{ ...FILED, noticedOn: undefined, reportedOn: on, happenedAt, moisture: undefined },
    spots: [{ place: { ...PORT_SIDE, fromTransomMm: 3_900 + 20 * i } }],
    ...more,
  });
  // What is put in when it is repaired is in every claimed hull, and led to nothing.
  const view = await shop.read<{ defects: { id: string }[] }>(`/api/claims/${id}`);
  const defects = view.defects.map((defect) => defect.id);
  await shop.repair(`H${i}-H`, defects, {
    used: [{ lot: 'LATER', amount: kg(1) }],
    happenedAt: '2026-08-01T12:00:00Z',
  });
};
const opened = async (code: string, frozen: Fields = {}, more: Fields = {}): Promise<void> => {
  await shop.act('/api/cases', { code, title: 'Blisters of the spring', ...more });
  await shop.act(`/api/cases/${code}/settings`, { ...FREEZE, ...frozen });
};
const answered = async (code: string): Promise<CaseAnswer> => (await looked(shop, code)).answer as CaseAnswer;

describe('groups within which a case would compare', () => {
  const groups = (query = '') => shop.get(`/api/cases/C-0/groups${query}`);
  beforeAll(() => shop.act('/api/cases', { code: 'C-0', title: 'Before anything is frozen' }));

  it('have the hulls with the day on which age begins, for each choice', async () => {
    const choice = (strata: string[], hullsInSmall = 0) => ({ strata, groups: 1, hullsInSmall });
    expect((await groups()).body).toEqual({
      hulls: 23,
      smallBelow: 20,
      choices: [choice(['build quarter', 'model']), choice(['model']), choice(['build quarter']), choice([])],
    });
    expect((await groups('?models=TS86&builtFrom=2026-01-05&builtTo=2026-01-06')).body).toMatchObject({ hulls: 23 });
    expect((await groups('?origin=at%20dealer')).body).toMatchObject({ hulls: 0 });
    expect((await groups('?builtFrom=2026-01-06')).body).toMatchObject({ hulls: 0 });
  });

  it('are refused for what is not there, with the field', async () => {
    expect((await groups('?models=TS86,TS99')).body).toMatchObject({ status: 422, errors: [{ pointer: '/models/1' }] });
    expect((await groups('?builtFrom=2026-02-01&builtTo=2026-01-01')).body).toMatchObject({
      ...{ status: 400, errors: [{ pointer: '/builtTo', detail: 'must not be before builtFrom' }] },
    });
    expect((await groups('?builtFrom=yesterday')).body).toMatchObject({
      ...{ status: 400, errors: [{ pointer: '/builtFrom' }] },
    });
    expect((await shop.get('/api/cases/C-99/groups')).status).toBe(404);
  });
});

describe('a case', () => {
  it('names the lot that claimed hulls share, with its figures and what the data cannot say, and not the lot of its weeks', async () => {
    await opened('C-1');
    const { verdict, exploratory, classes, sentences, cannotSay, hulls, next, cover } = await answered('C-1');
    expect(hulls).toMatchObject({ atRisk: 23, withClaim: 6, prompted: 1, withoutOrigin: 1, withoutOriginWithClaim: 1 });
    const [first, ...others] = classes;
    expect(first).toMatchObject({
      ...{ named: 'BAD', hulls: 7, observed: 6, lots: ['BAD'] },
      members: [
        { lot: 'BAD', supplierLot: 'S-BAD', material: 'Vinyl ester resin', family: 'resin in hull molding, Skin coat' },
      ],
      crude: { table: { exposedWithClaim: 6, exposedWithout: 1, othersWithClaim: 0, othersWithout: 16 } },
      atShares: [
        { fromShare: 0.01, hulls: 8, withClaim: 6 },
        { fromShare: 0.05, hulls: 7, withClaim: 6 },
        { fromShare: 0.2, hulls: 7, withClaim: 6 },
      ],
    });
    // By hand: 6 of 6 claims on 7 of 23 hulls, C(7,6) / C(23,6) = 7 / 100947.
    expect(first?.crude.p).toBeCloseTo(7 / 100_947, 12);
    expect(['strong', 'the data cannot say which']).toContain(verdict);
    expect(exploratory).toBe(true);
    expect(cover.steps[0]).toMatchObject({ named: 'BAD (resin in hull molding, Skin coat)', explains: 6 });
    expect(others.filter(({ strength }) => strength === 'strong').map(({ named }) => named)).toEqual([]);
    expect(JSON.stringify(classes)).not.toContain('LATER');
    expect(sentences.join(' ')).toMatch(/associated with BAD: 6 of 7/);
    expect(sentences.join(' ')).not.toMatch(/cause/);
    expect(cannotSay.join(' ')).toMatch(/Exploratory.*/);
    expect(next.join(' ')).toMatch(/retained samples of BAD.*/);
  });

  it('comes out again to the digit from what was kept, and every look is kept and counted', async () => {
    const one = await looked(shop, 'C-1');
    const two = await looked(shop, 'C-1');
    expect([one.look, two.look]).toEqual([2, 3]);
    expect([two.answer, two.answerSha256, two.inputsSha256]).toEqual([one.answer, one.answerSha256, one.inputsSha256]);
    const again = await shop.read<LookAgain>('/api/cases/C-1/looks/2/again');
    expect(again).toMatchObject({ same: true, answerSha256: one.answerSha256 });
    const view = await shop.read<CaseView>('/api/cases/C-1');
    expect(view).toMatchObject({ looks: 3, exploratory: true, settings: [{ version: 1 }] });
    expect(view.history.map(({ look }) => look)).toEqual([3, 2, 1]);
    expect(view.settings[0]?.sha256).toMatch(/^[0-9a-f]{64}$/);
  });

  it('tests by claims recorded after its settings were frozen when it says so; of the others none counts', async () => {
    const fresh = { claims: 'recorded after this freeze' };
    const { cutOff: _named, ...unnamed } = FREEZE;
    await shop.act('/api/cases', { code: 'C-2', title: 'Blisters of the spring' });
    const path = '/api/cases/C-2/settings';
    expect((await shop.post(path, shop.envelope({ ...FREEZE, ...fresh }))).body).toMatchObject({
      ...{ status: 400, errors: [{ pointer: '/cutOff', detail: expect.stringMatching(/^must be after .*left out/) }] },
    });
    const { result } = await shop.receipt(path, { ...unnamed, ...fresh });
    expect(result).toMatchObject({ cutOffBecause: expect.stringMatching(/^each look until its own day/) });
    const { verdict, exploratory, sentences, hulls } = await answered('C-2');
    expect({ verdict, exploratory }).toEqual({ verdict: 'no lot stands out', exploratory: false });
    expect(hulls).toMatchObject({ atRisk: 0, withClaim: 0, before: 23 });
    expect(sentences.at(-1)).toMatch(/^There is nothing to judge yet/);
  });

  it('shows where on the hull, and how many more to expect with what is not known', async () => {
    const { places, forecast } = (await shop.read<LookView>('/api/cases/C-1/looks/1')).answer as CaseAnswer;
    expect(places).toMatchObject({ hulls: 6, cluster: { hulls: 6 } });
    expect(places?.zones.filter(({ hulls }) => hulls > 0).map(({ name }) => name)).toEqual([
      'midship, inner half, port',
    ]);
    const [all] = forecast?.groups ?? [];
    expect(all).toMatchObject({ withClaim: 6, range: null });
    expect(all?.interval?.lower).toBeLessThanOrEqual(Number(all?.expected));
    expect(all?.interval?.upper).toBeGreaterThanOrEqual(Number(all?.expected));
    const others = forecast?.groups.find(({ group }) => group === 'the other hulls');
    expect(others).toMatchObject({ withClaim: 0, expected: null, interval: null, range: { lower: 0 } });
  });

  it('prints as a report that holds all it takes to work it out again, and counts every look', async () => {
    const report = '/api/cases/C-1/looks/1/report.pdf';
    const { text, headers, bytes } = await readPaper(service, report);
    const one = await shop.read<LookView>('/api/cases/C-1/looks/1');
    const words = [
      ...['C-1', 'Blisters of the spring', 'look 1 of 3', 'associated with BAD: 6 of 7', 'Exploratory'],
      ...['begun', 'months in service', '2026-', '23 hulls', '1 hull left out (4.17 %', '1 of them with a claim'],
      ...['by quality', 'Version', '1 of 1', 'Blister', 'left the place of manufacture', '2026-09-30', 'seed 7'],
      ...['BAD', '6 of 7 hulls', 'hazard odds', '6 / 1', '0 / 16', 'S-BAD', 'Vinyl ester resin', '1 %: 6 of 8'],
      ...['cannot be judged', 'Runner-up', 'No people', 'midship, inner half, port', '90 % interval', '2026-10'],
      ...['retained samples of BAD', 'Kalbfleisch', 'Kulldorff', one.frozen.sha256],
      ...[one.inputsSha256 ?? '', one.answerSha256 ?? '', 'RFC 8785'],
    ];
    expect(outOfOrder(text, words)).toBeUndefined();
    expect(text).not.toContain('counsel');
    expect(text).not.toMatch(/QUA-1|LAM-1|NaN|undefined|null/);
    expect(headers.get('content-disposition')).toBe('inline; filename="inquiry-C-1-1.pdf"');
    expect((await readPaper(service, report)).bytes.equals(bytes)).toBe(true);
  });

  it('is cut off the day before the first hold on a lot in hulls that had left', async () => {
    await shop.act('/api/lots/BAD/holds', { kind: 'quality', reason: 'suspect', happenedAt: '2026-08-20T15:00:00Z' });
    await shop.act('/api/cases', { code: 'C-3', title: 'Blisters' });
    const { cutOff: _named, ...fields } = FREEZE;
    const { result } = await shop.receipt('/api/cases/C-3/settings', { ...fields, happenedAt: '2026-09-01T12:00:00Z' });
    expect(result).toMatchObject({
      version: 1,
      cutOff: '2026-08-19',
      cutOffBecause: expect.stringContaining('first hold'),
    });
  });

  it('at the direction of counsel is not there for anybody but those named', async () => {
    await opened('C-4', {}, { underCounsel: true, readers: ['QUA-1'] });
    const status = async (badge: string, code: string): Promise<unknown> => {
      const answer = await fetch(`${service.url}/api/cases/${code}`, { headers: await service.signedIn(badge) });
      return [answer.status, (await answer.text()).replaceAll(code.slice(0, 3), 'N').replace(/"instance":"[^"]*"/, '')];
    };
    expect(await status('QUA-1', 'C-4')).toEqual([200, expect.stringContaining('"underCounsel":true')]);
    expect(await status('LAM-1', 'C-4')).toEqual(await status('LAM-1', 'C-9'));
    expect((await shop.read<CasePage>('/api/cases')).items.map(({ code }) => code)).toContain('C-4');
    await looked(shop, 'C-4');
    expect((await readPaper(service, '/api/cases/C-4/looks/1/report.pdf')).text).toContain('thedirectionofcounsel');
    expect(await status('LAM-1', 'C-4/looks/1/report.pdf')).toEqual(await status('LAM-1', 'C-9/looks/1/report.pdf'));
    const listed = await fetch(`${service.url}/api/cases`, { headers: await service.signedIn('LAM-1') });
    expect(await listed.text()).not.toContain('C-4');
  });

  it('is refused a look before anything is frozen, a kind that is none, and a version that is not there', async () => {
    await shop.act('/api/cases', { code: 'C-5', title: 'Blisters' });
    expect((await shop.post('/api/cases/C-5/looks', shop.envelope())).status).toBe(422);
    const wrong = await shop.post('/api/cases/C-5/settings', shop.envelope({ ...FREEZE, kind: 'rust' }));
    expect([wrong.status, JSON.stringify(wrong.body)]).toEqual([400, expect.stringContaining('/kind')]);
    expect((await shop.post('/api/cases/C-1/looks', shop.envelope({ version: 9 }))).status).toBe(422);
    expect((await shop.get('/api/cases/C-1/looks/99')).status).toBe(404);
  });
});
