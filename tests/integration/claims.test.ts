import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ClaimPage, ClaimView, DefectView, WarrantyTermsView } from '@hull-record/contracts';
import sharp from 'sharp';
import { startService, type RunningService } from '../support/service.js';
import { PORT_SIDE, Shop, type Answer, type Fields } from '../support/shop.js';
import { FILED, TERMS } from '../support/write-samples-claims.js';

let service: RunningService;
let shop: Shop;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/models/TS86/warranty-terms', { ...TERMS, happenedAt: '2025-08-01T12:00:00Z' });
  for (const [number, serial] of [
    ['C1', '00001'],
    ['C2', '00002'],
  ] as const) {
    await shop.startHull(number);
    await shop.act(`/api/hulls/${number}/hins`, { hin: `TRZ${serial}A626` });
  }
  await shop.act('/api/hulls/C1/life', { what: 'sold to first purchaser', happenedAt: '2026-01-05T15:00:00Z' });
});
afterAll(() => service.close());

const file = (hull: string, fields: Fields = {}): Promise<Answer['body']> =>
  shop.receipt(`/api/hulls/${hull}/claims`, { ...FILED, happenedAt: '2026-03-02T12:00:00Z', ...fields });
const claim = (id: string): Promise<ClaimView> => shop.read(`/api/claims/${id}`);
const refused = async (path: string, fields: Fields): Promise<string> => {
  const { status, body } = await shop.post(path, shop.envelope(fields));
  return `${status} ${JSON.stringify(body)}`;
};

describe('a claim', () => {
  it('becomes defects at its places, and is shown with what the terms say of it', async () => {
    const { id, result } = await file('C1', { reportedOn: '2026-03-01' });
    expect(result).toMatchObject({ mark: 'C1', defects: ['D1 of C1-H'] });
    const view = await claim(id);
    expect(view).toMatchObject({
      ...{ hull: 'C1', hin: 'TRZ00001A626', model: 'TS86', kind: 'blister', grade: '6M', prompted: false, first: true },
      ...{ hint: 'below the gel coat: a hint by size and looks, no finding', decision: null, decisions: [] },
      defects: [{ mark: 'D1', part: 'C1-H', place: PORT_SIDE, zone: expect.stringContaining('below the waterline') }],
      term: {
        ...{
          within: true,
          startsOn: '2026-01-05',
          startsWith: 'sold to first purchaser',
          endsOn: '2031-01-04',
          year: 1,
        },
        ...{ bearsPercent: 100, terms: { version: 1 }, modelYear: 2026, exclusions: ['grounding'], says: [] },
      },
    });
    expect(await shop.read<DefectView>(`/api/defects/${view.defects[0]?.id}`)).toMatchObject({
      ...{ kind: 'blister', grade: '6M', layer: 'L2', lengthMm: 8, perM2: 24, state: 'open' },
    });
  });

  it('keeps moisture as the meter showed it, and says when there are too few readings, too early, or through a coating', async () => {
    const { id, result } = await file('C1', { hoursAshore: 6, spots: [] });
    const says = [
      'The coating was not removed at the spots.',
      'Read 6 h ashore: too early; 24 h at least.',
      '1 readings: practice asks about 20.',
    ];
    expect(result).toMatchObject({ says, defects: [] });
    const view = await claim(id);
    expect(view).toMatchObject({ says, moisture: FILED['moisture'], first: false });
    expect(JSON.stringify(view)).not.toMatch(/per cent|%/);
  });

  it('is asked for four kinds of picture, each shown without its metadata', async () => {
    const { id } = await file('C1');
    const photo = await sharp({ create: { width: 9, height: 7, channels: 3, background: '#123456' } })
      .jpeg()
      .toBuffer();
    const added = await shop.postPhoto(`/api/claims/${id}/photos`, shop.envelope({ shows: 'whole side' }), photo);
    expect(added).toMatchObject({ status: 201, body: { result: { width: 9, height: 7 } } });
    const view = await claim(id);
    expect(view.photosAsked).toEqual(['HIN plate', 'zone with scale', 'close-up with ruler']);
    expect(view.photos).toMatchObject([{ shows: 'whole side' }]);
    const shown = await fetch(`${service.url}/api/photos/${view.photos[0]?.id}`, { headers: await service.signedIn() });
    expect([shown.status, shown.headers.get('content-type')]).toEqual([200, 'image/jpeg']);
    const none = await shop.postPhoto(`/api/claims/${id}/photos`, shop.envelope({ shows: 'my dog' }), photo);
    expect([none.status, JSON.stringify(none.body)]).toEqual([400, expect.stringContaining('/shows')]);
  });

  it('is decided by a person with a reason, beside what the terms said; the newest decision holds', async () => {
    const { id } = await file('C2', { reportedOn: '2026-03-01' });
    expect((await claim(id)).term).toMatchObject({
      ...{ within: null, startsOn: null },
      says: ['When it began is not on record: warranty registered, or sold to first purchaser.'],
    });
    expect(await refused(`/api/claims/${id}/decisions`, { decision: 'part paid', reason: 'x' })).toMatch(
      /^400.*paidPercent/,
    );
    expect(await refused(`/api/claims/${id}/decisions`, { decision: 'accepted' })).toMatch(/^400.*reason/);
    await shop.act(`/api/claims/${id}/decisions`, { decision: 'more is asked', reason: 'no picture of the HIN' });
    expect((await shop.read<ClaimPage>('/api/claims?undecided=true&hull=C2')).items).toHaveLength(1);
    const cost = { amount: '1840.50', currency: 'USD' };
    await shop.act(`/api/claims/${id}/decisions`, {
      decision: 'goodwill',
      reason: 'kept the season',
      hours: 12.5,
      cost,
    });
    const view = await claim(id);
    expect(view).toMatchObject({ decision: 'goodwill' });
    expect(view.decisions).toMatchObject([
      { decision: 'goodwill', hours: 12.5, cost, paidPercent: null, term: { within: null } },
      { decision: 'more is asked', cost: null },
    ]);
    expect((await shop.read<ClaimPage>('/api/claims?undecided=true&hull=C2')).items).toEqual([]);
  });

  it('is marked when a hold or a notice brought it to light, also later, and then is not compared', async () => {
    const { id } = await file('C2', { foundBy: 'inspection of a hold' });
    expect(await claim(id)).toMatchObject({ prompted: true, foundBy: 'inspection of a hold', foundByReason: null });
    await shop.act(`/api/claims/${id}/marks`, { foundBy: 'owner or dealer', reason: 'had called before' });
    expect(await claim(id)).toMatchObject({ prompted: false, foundByReason: 'had called before' });
    await shop.act(`/api/claims/${id}/marks`, { foundBy: 'after a notice', reason: 'the letter came first' });
    expect(await claim(id)).toMatchObject({ prompted: true });
  });

  it('is refused for a kind, grade, place, part or day that cannot be', async () => {
    const path = '/api/hulls/C1/claims';
    expect(await refused(path, { ...FILED, kind: 'rust' })).toMatch(/^400.*\/kind/);
    expect(await refused(path, { ...FILED, grade: '7M' })).toMatch(/^400.*\/grade/);
    expect(await refused(path, { ...FILED, reportedOn: '2026-03-05' })).toMatch(/^400.*\/reportedOn/);
    expect(await refused(path, { ...FILED, noticedOn: '2026-01-05' })).toMatch(/^400.*\/noticedOn/);
    const old = { reportedOn: '2026-01-03', noticedOn: '2026-01-03' };
    expect(await refused(path, { ...FILED, ...old })).toMatch(
      /^400.*\/reportedOn.*before the hull was begun.*\/noticedOn.*before the hull was begun/,
    );
    const off = { place: { ...PORT_SIDE, fromTransomMm: 9_000 } };
    expect(await refused(path, { ...FILED, spots: [off] })).toMatch(/^400.*\/spots\/0\/place\/fromTransomMm/);
    expect(await refused(path, { ...FILED, spots: [{ place: PORT_SIDE, part: 'C2-H' }] })).toMatch(
      /^422.*\/spots\/0\/part/,
    );
    expect(await refused('/api/hulls/NONE/claims', FILED)).toMatch(/^404/);
  });

  it('that was filed for another hull is withdrawn with its defects', async () => {
    const { id } = await file('C1', { reference: 'wrong hull' });
    const [defect] = (await claim(id)).defects;
    await shop.correct(id);
    expect((await shop.get(`/api/claims/${id}`)).status).toBe(404);
    expect((await shop.get(`/api/defects/${defect?.id}`)).status).toBe(404);
    expect((await shop.read<ClaimPage>('/api/claims')).items.map((each) => each.id)).not.toContain(id);
  });
});

describe('warranty terms', () => {
  it('are versions by model year: what held when a warranty began holds for it, whatever came later', async () => {
    const later = { ...TERMS, covers: [{ years: 2 }], reason: 'shorter', happenedAt: '2026-01-10T12:00:00Z' };
    await shop.act('/api/models/TS86/warranty-terms', later);
    const terms = await shop.read<WarrantyTermsView[]>('/api/models/TS86/warranty-terms');
    expect(terms.map(({ version, reason }) => [version, reason])).toEqual([
      [2, 'shorter'],
      [1, 'terms of the season'],
    ]);
    const { id } = await file('C1');
    expect((await claim(id)).term).toMatchObject({ terms: { version: 1 }, endsOn: '2031-01-04' });
    await shop.act('/api/hulls/C2/life', { what: 'warranty registered', happenedAt: '2026-01-20T12:00:00Z' });
    const { id: other } = await file('C2', { happenedAt: '2026-03-02T12:00:00Z' });
    expect((await claim(other)).term).toMatchObject({ terms: { version: 2 }, endsOn: '2028-01-19' });
    expect(await refused('/api/models/NONE/warranty-terms', TERMS)).toMatch(/^404/);
    expect(
      await refused('/api/models/TS86/warranty-terms', { ...TERMS, covers: [{ kinds: ['rust'], years: 1 }] }),
    ).toMatch(/^400.*\/covers\/0\/kinds\/0/);
  });
});

describe('the list of claims', () => {
  it('is read page by page, by kind, hull and dealer', async () => {
    const all = (await shop.read<ClaimPage>('/api/claims')).items;
    const first = await shop.read<ClaimPage>('/api/claims?limit=2');
    const rest = await shop.read<ClaimPage>(`/api/claims?cursor=${first.next}`);
    expect([...first.items, ...rest.items]).toEqual(all);
    expect((await shop.read<ClaimPage>('/api/claims?kind=sag')).items).toEqual([]);
    expect((await shop.read<ClaimPage>('/api/claims?dealer=NLM')).items).toEqual([]);
    expect(
      (await shop.read<ClaimPage>('/api/claims?hull=TRZ-00001-A6-26')).items.every(({ hull }) => hull === 'C1'),
    ).toBe(true);
  });

  it('is narrowed to those decided on, those that wait, those prompted, and the others', async () => {
    const listed = async (query: string): Promise<ClaimPage['items']> =>
      (await shop.read<ClaimPage>(`/api/claims${query}`)).items;
    const all = await listed('');
    const waits = ({ decision }: ClaimPage['items'][number]): boolean =>
      decision === null || decision === 'more is asked';
    expect(await listed('?undecided=false')).toEqual(all.filter((each) => !waits(each)));
    expect(await listed('?undecided=true')).toEqual(all.filter(waits));
    expect(await listed('?prompted=true')).toEqual(all.filter(({ prompted }) => prompted));
    expect(await listed('?prompted=false')).toEqual(all.filter(({ prompted }) => !prompted));
    for (const query of ['?undecided=false', '?prompted=true']) expect(await listed(query)).not.toEqual([]);
  });
});
