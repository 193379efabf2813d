import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView, Obstacle, PartView } from '@hull-record/contracts';
import { holdLock } from '../support/hold-lock.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Answer } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('G', 'GEL-W');
  await shop.receive('R', 'RES-VE');
  await shop.receive('M', 'MAT-450');
});
afterAll(() => service.close());

const release = (number: string): Promise<Answer> => shop.post(`/api/hulls/${number}/releases`, shop.envelope());
const hull = (number: string): Promise<HullView> => shop.read(`/api/hulls/${number}`);
const wholeHull = (number: string, resin = 'R') =>
  shop.wholeHull(number, { gel: 'G', resin: { lot: resin }, glass: 'M' });

/** What a refused release names, in order; the hull shows the same. */
const inTheWay = async (number: string): Promise<readonly Obstacle[]> => {
  const answer = await release(number);
  expect(answer).toMatchObject({ status: 409, body: { type: '/problems/not-releasable' } });
  const named = answer.body['inTheWay'] as unknown as Obstacle[];
  expect((await hull(number)).release).toEqual({ releasedAt: null, questioned: false, inTheWay: named });
  return named;
};

const rules = async (number: string): Promise<string[]> => (await inTheWay(number)).map(({ rule }) => rule).sort();

describe('a release', () => {
  it('of a hull with nothing in the way is recorded, and the hull says so', async () => {
    await wholeHull('OK-1');
    expect(await release('OK-1')).toMatchObject({ status: 201, body: { result: { what: 'released' } } });
    const found = await hull('OK-1');
    expect(found.release).toEqual({ releasedAt: expect.any(String), questioned: false, inTheWay: [] });
    expect(Date.parse(String(found.release.releasedAt))).toBe(Date.parse(found.now.since));
    expect(found.now.what).toBe('released');
    const left = await shop.receipt('/api/hulls/OK-1/life', { what: 'left the place of manufacture' });
    expect(left.result).toMatchObject({ nonconformities: [] });
  });

  it('of a hull just begun names every layer that is not made', async () => {
    await shop.startHull('NEW-1');
    expect(await inTheWay('NEW-1')).toMatchObject([
      { rule: 'layer-missing', part: 'NEW-1-H', layer: 'L1' },
      { rule: 'layer-missing', part: 'NEW-1-H', layer: 'L2' },
      { rule: 'layer-missing', part: 'NEW-1-H', layer: 'L3' },
    ]);
  });

  it('is refused with everything in the way, one of each kind, until each is put right', async () => {
    await shop.receive('R-HELD', 'RES-VE');
    await shop.startHull('ALL-1');
    // A layer in a room too cold, with two of three films read, one of them thin, and a defect, unsigned; the lot held.
    const cold = { airTemperature: { value: 12, unit: 'C' } };
    const gel = await shop.layer('ALL-1', 'L1', [{ lot: 'G', amount: kg(18) }], { climate: cold });
    const taken = await shop.film(gel, [
      [14, 16],
      [18, 20],
    ]);
    const skin = [
      { lot: 'R-HELD', amount: kg(20) },
      { lot: 'M', amount: kg(9) },
    ];
    await shop.layer('ALL-1', 'L2', skin);
    const defect = await shop.defect('ALL-1-H', { layer: 'L2' });
    await shop.setState('R-HELD', 'held');
    const steps: [string, () => Promise<unknown>][] = [];
    const [thin] = taken.result['spots'] as unknown as { id: string }[];
    const part = await shop.read<PartView>('/api/parts/ALL-1-H');
    expect(part.nonconformities.map(({ rule }) => rule)).toEqual(['climate-outside', 'hold-point-passed']);
    for (const [i, { id }] of part.nonconformities.entries())
      steps.push(['nonconformity-open', () => shop.dispose('nonconformity', id, 'use as is', `ALL-N${i}`)]);
    steps.push(['hold-point-unsigned', () => shop.sign(gel)]);
    steps.push(['reading-missing', () => shop.film(gel, [[16, 18]])]);
    steps.push(['reading-outside', () => shop.dispose('reading', String(thin?.id), 'use as is', 'ALL-R')]);
    steps.push(['defect-open', () => shop.dispose('defect', defect, 'use as is', 'ALL-D')]);
    steps.push(['lot-held', () => shop.setState('R-HELD', 'released')]);
    const makeLast = async (): Promise<void> => {
      const bulk = await shop.layer('ALL-1', 'L3', [{ lot: 'R', amount: kg(60) }]);
      expect(await rules('ALL-1')).toEqual(['hold-point-unsigned']);
      await shop.sign(bulk);
    };
    steps.push(['layer-missing', makeLast]);
    while (steps.length > 0) {
      expect(await rules('ALL-1')).toEqual(steps.map(([rule]) => rule).sort());
      await steps.shift()?.[1]();
    }
    expect((await release('ALL-1')).status).toBe(201);
  });

  it('looks at every part that is joined, and at what is behind every bucket', async () => {
    await wholeHull('DEEP-1');
    await shop.receive('R-DEEP', 'RES-VE');
    await shop.mix('B-DEEP', [{ lot: 'R-DEEP', amount: kg(5) }]);
    await shop.startDeck('DEEP-1-D');
    await shop.layer('', 'D1', [{ lot: 'B-DEEP', amount: kg(4) }], { part: 'DEEP-1-D' });
    await shop.join('DEEP-1', 'DEEP-1-D');
    await shop.setState('R-DEEP', 'rejected');
    expect(await inTheWay('DEEP-1')).toMatchObject([
      { rule: 'lot-rejected', detail: expect.stringContaining('R-DEEP') },
    ]);
    await shop.setState('R-DEEP', 'released');
    expect((await release('DEEP-1')).status).toBe(201);
  });

  it('waits for quality when a bucket in the hull was mixed of an expired lot', async () => {
    await shop.receive('G-OLD', 'GEL-W', { expiresOn: '2025-12-31' });
    const { id, result } = await shop.receipt('/api/mixes', {
      code: 'B-OLD',
      inputs: [{ lot: 'G-OLD', amount: kg(20) }],
    });
    const [opened] = result['nonconformities'] as unknown as { id: string }[];
    await shop.wholeHull('OLD-1', { gel: id, resin: { lot: 'R' }, glass: 'M' });
    expect(await rules('OLD-1')).toEqual(['nonconformity-open', 'nonconformity-open']);
    await shop.dispose('nonconformity', String(opened?.id), 'use as is', 'OLD-N1');
    const [rest] = await inTheWay('OLD-1');
    const asked = await shop.dispose('nonconformity', String(rest?.about), 'rework');
    expect(await rules('OLD-1')).toContain('nonconformity-open');
    const done = { enteredBy: 'INS-1', doneBy: ['LAM-1'], note: 'laid up again' };
    await shop.act(`/api/dispositions/${asked}/rework`, done);
    expect((await release('OLD-1')).status).toBe(201);
  });

  it('is not given by scrapping what is in the way', async () => {
    await wholeHull('SCRAP-1');
    await shop.dispose('defect', await shop.defect('SCRAP-1-H'), 'scrap');
    expect(await rules('SCRAP-1')).toEqual(['defect-open']);
  });
});

describe('a hold that is placed while a release runs', () => {
  it('is seen by the release, or comes after it: they never pass each other', async () => {
    for (let i = 0; i < 12; i += 1) {
      await shop.receive(`R-RACE-${i}`, 'RES-VE');
      await wholeHull(`RACE-${i}`, `R-RACE-${i}`);
      const hold = (): Promise<Answer> =>
        shop.post(`/api/lots/R-RACE-${i}/states`, shop.envelope({ state: 'held', reason: 'slow to gel' }));
      const both = i % 2 === 0 ? [release(`RACE-${i}`), hold()] : [hold(), release(`RACE-${i}`)];
      const [released, held] = i % 2 === 0 ? await Promise.all(both) : (await Promise.all(both)).reverse();
      expect(held?.status).toBe(201);
      if (released?.status === 201) expect(before(released, held as Answer)).toBe(true);
      else expect(released?.body['inTheWay']).toMatchObject([{ rule: 'lot-held' }]);
    }
  });

  const before = (first: Answer, second: Answer): boolean =>
    String(first.body['recordedAt']) <= String(second.body['recordedAt']);

  it.each([
    ['after it', 201],
    ['before it', 409],
  ])('%s, when both wait for a third, decides the release: %s', async (order, status) => {
    const number = `WAIT-${status}`;
    await shop.receive(`R-${number}`, 'RES-VE');
    await wholeHull(number, `R-${number}`);
    const hold = (): Promise<Answer> =>
      shop.post(`/api/lots/R-${number}/states`, shop.envelope({ state: 'held', reason: 'slow to gel' }));
    const third = await holdLock(service, 'gate');
    const first = order === 'after it' ? release(number) : hold();
    await third.waiting(1);
    const second = order === 'after it' ? hold() : release(number);
    await third.waiting(2);
    await third.letGo();
    const [released] = order === 'after it' ? [await first, await second] : [await second, await first];
    expect(released.status).toBe(status);
    expect((await hull(number)).release.inTheWay).toMatchObject([{ rule: 'lot-held' }]);
  });
});
