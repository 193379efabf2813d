import { afterAll, beforeAll, expect, it } from '@jest/globals';
import type { DefectSuspects } from '@hull-record/contracts';
import { readPages, solid } from '../support/read-pdf.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';
import { readFacts, walkHullsWith } from '../support/walk/index.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

const BOTTOM = { surface: 'shell', side: 'port', fromTransomMm: 3_000, girthMm: 700 };

/** Receives a good and a bad resin lot; the bad one goes through the tank and its heel, and into a bucket. */
const supply = async (): Promise<void> => {
  await shop.receive('G-1', 'GEL-W');
  await shop.receive('M-1', 'MAT-450');
  await shop.receive('C-1', 'MEKP', { amount: kg(20) });
  await shop.receive('BAD', 'RES-VE', { amount: kg(400) });
  await shop.receive('GOOD', 'RES-VE', { amount: kg(3_000) });
};

const inTank = { tank: 'T1' };

/** Hulls from the bad fill, its heel (some of that entered late), the heel of that, and none; one meets it in a repair. */
const build = async (): Promise<void> => {
  await shop.fill('T1-1', null, [{ lot: 'BAD', amount: kg(350) }]);
  await shop.wholeHull('86-1', { gel: 'G-1', resin: inTank, glass: 'M-1' });
  await shop.fill('T1-2', kg(100), [{ lot: 'GOOD', amount: kg(500) }]);
  const { skin } = await shop.wholeHull('86-2', { gel: 'G-1', resin: inTank, glass: 'M-1' });
  const beforeTheThirdFill = shop.tick();
  await shop.fill('T1-3', kg(60), [{ lot: 'GOOD', amount: kg(800) }]);
  const entered = { used: [{ ...inTank, amount: kg(5) }], happenedAt: beforeTheThirdFill };
  await shop.act(`/api/layers/${skin}/used`, entered);
  await shop.wholeHull('86-3', { gel: 'G-1', resin: inTank, glass: 'M-1' });
  await shop.wholeHull('86-4', { gel: 'G-1', resin: { lot: 'GOOD' }, glass: 'M-1' });
  await shop.mix('B-14', [
    { lot: 'BAD', amount: kg(10) },
    { lot: 'C-1', amount: kg('0.18') },
  ]);
  await shop.wholeHull('86-5', { gel: 'G-1', resin: { lot: 'GOOD' }, glass: 'M-1' });
  const dry = await shop.defect('86-5-H', { layer: 'L2', place: BOTTOM });
  const repair = await shop.repair('86-5-H', [dry], { used: [{ lot: 'B-14', amount: kg(1) }] });
  await shop.judge(repair, true);
};

/** A void in the skin coat of the first hull, repaired and accepted by another person. */
const putRight = async (): Promise<void> => {
  const found = await shop.defect('86-1-H', {
    kind: 'air-bubble',
    layer: 'L2',
    place: BOTTOM,
    lengthMm: 22,
    widthMm: 14,
  });
  const refused = await shop.post('/api/hulls/86-1/releases', shop.envelope());
  expect(refused).toMatchObject({ status: 409, body: { inTheWay: [{ rule: 'defect-open', about: found }] } });
  const repair = await shop.repair('86-1-H', [found], {
    used: [
      { lot: 'GOOD', amount: kg(1) },
      { lot: 'M-1', amount: kg('0.5') },
    ],
  });
  await shop.judge(repair, true);
};

it('walks the whole job from receipt to the hulls that share the bad lot', async () => {
  await supply();
  await build();
  await putRight();
  await shop.act('/api/hulls/86-1/hins', { hin: 'TRZ86001A626' });
  await shop.act('/api/hulls/86-1/releases', {});
  const paper = await fetch(`${service.url}/api/hulls/TRZ86001A626/build-record.pdf`, {
    headers: await service.signedIn(),
  });
  expect(paper.headers.get('content-type')).toBe('application/pdf');
  const text = solid(await readPages(Buffer.from(await paper.arrayBuffer())));
  for (const word of ['86-1', 'TRZ86001A626', 'S-BAD', 'S-G-1', 'HP1', 'LAM-1', 'INS-1', 'D1', 'R1'])
    expect(text).toContain(word);

  await shop.act('/api/hulls/86-1/life', { what: 'left the place of manufacture' });
  await shop.act('/api/hulls/86-1/life', { what: 'at dealer', dealer: 'NLM' });
  const blister = await shop.defect('86-1-H', { kind: 'blister', grade: '6M', layer: 'L2', place: BOTTOM });
  const { body } = await shop.get(`/api/defects/${blister}/lots`);
  const suspects = body as unknown as DefectSuspects;
  expect(suspects).toMatchObject({ hull: '86-1', layer: 'L2' });
  const resins = suspects.lots.filter((lot) => lot.role === 'resin');
  expect(resins.map((lot) => lot.lot).sort()).toEqual(['BAD', 'GOOD']);

  const bad = resins.find((lot) => lot.lot === 'BAD');
  expect(bad).toMatchObject({ supplierLot: 'S-BAD', share: 1 });
  expect(bad?.places).toContainEqual(
    expect.objectContaining({
      paths: [
        [
          { lot: 'BAD', origin: 'received' },
          { lot: 'T1-1', origin: 'tank' },
        ],
      ],
    }),
  );
  expect(bad?.otherHulls).toEqual(await walked(bad?.lotId ?? '', '86-1'));
  expect(bad?.otherHulls).toEqual(['86-2', '86-3', '86-5']);
});

/** The other hulls that the brute-force walk over the bare facts finds. */
const walked = async (lotId: string, but: string): Promise<string[]> => {
  const facts = await readFacts((sql) => service.asOwner(sql));
  const numbers = await service.asOwner<{ hull_id: string; as_printed: string }>(
    "select hull_id, as_printed from fact.hull_number where kind = 'hull number'",
  );
  const hulls = walkHullsWith(lotId, facts, { floor: 1e-9 }).map(
    ({ hull }) => numbers.find((row) => row.hull_id === hull)?.as_printed ?? '',
  );
  return hulls.filter((hull) => hull !== but).sort();
};

it('says how much of the bad lot each hull holds, through heels, a bucket and a repair', async () => {
  const { body } = await shop.get('/api/lots/BAD/hulls');
  const { items } = body as unknown as {
    items: { hull: string; kg: number; largestLayerShare: number; basis: string; firstAt: string; lastAt: string }[];
  };
  const share2 = 100 / 600;
  const share3 = (60 / 860) * share2;
  expect(items.map(({ hull, kg: mass }) => [hull, mass])).toEqual([
    ['86-1', expect.closeTo(80, 9)],
    ['86-2', expect.closeTo(85 * share2, 9)],
    ['86-3', expect.closeTo(80 * share3, 9)],
    ['86-5', expect.closeTo(10 / 10.18, 9)],
  ]);
  expect(items.map((hull) => hull.largestLayerShare)).toEqual(
    [1, share2, share3, 1].map((share) => expect.closeTo(share, 9)),
  );
  const { body: some } = await shop.get('/api/lots/BAD/hulls?minShare=0.1');
  expect((some as unknown as typeof body & { items: { hull: string }[] }).items.map(({ hull }) => hull)).toEqual([
    '86-1',
    '86-2',
    '86-5',
  ]);
});

it('answers for a tank lot and a bucket as for a received lot', async () => {
  const hulls = async (lot: string): Promise<unknown> => {
    const { body } = await shop.get(`/api/lots/${lot}/hulls`);
    return (body as unknown as { items: { hull: string; kg: number }[] }).items.map(({ hull, kg: mass }) => [
      hull,
      mass,
    ]);
  };
  expect(await hulls('T1-2')).toEqual([
    ['86-2', expect.closeTo(85, 9)],
    ['86-3', expect.closeTo((80 * 60) / 860, 9)],
  ]);
  expect(await hulls('B-14')).toEqual([['86-5', expect.closeTo(1, 9)]]);
});

it('names the lots that hulls share, the most shared and elsewhere rarest first', async () => {
  const { body } = await shop.post('/api/shared-lots', { hulls: ['86-1', 'trz86001a626', '86-2', '86-3'] });
  const { items } = body as unknown as { items: { lot: string; ofThese: number; ofOthers: number }[] };
  expect(items.map(({ lot, ofThese, ofOthers }) => [lot, ofThese, ofOthers])).toEqual([
    ['BAD', 3, 1],
    ['G-1', 3, 2],
    ['GOOD', 3, 2],
    ['M-1', 3, 2],
  ]);
});

it('streams the same hulls, one JSON object a line', async () => {
  const answer = await fetch(`${service.url}/api/lots/BAD/hulls.ndjson`, { headers: await service.signedIn() });
  const lines = (await answer.text())
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { hull: string });
  expect(lines.map(({ hull }) => hull)).toEqual(['86-1', '86-2', '86-3', '86-5']);
});
