import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { LotView, VerdictView } from '@hull-record/contracts';
import { openJudgedShop, rulesAbout } from '../support/judged-shop.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await openJudgedShop(shop);
});
afterAll(() => service.close());

const bucket = (code: string, catalyst: number): Fields => ({
  code,
  inputs: [
    { lot: 'RB-1', amount: kg(10) },
    { lot: 'CB-1', amount: kg(catalyst) },
  ],
});
const ofLot = async (lot: string): Promise<readonly VerdictView[]> =>
  (await shop.read<LotView>(`/api/lots/${lot}`)).verdicts;
describe('the catalyst of a bucket', () => {
  it('inside the window of the data sheet is said with its figures, rule and source', async () => {
    await shop.act('/api/mixes', bucket('B-1', 0.18));
    const [verdict] = await ofLot('B-1');
    expect(verdict).toMatchObject({
      topic: 'catalyst',
      verdict: 'inside',
      source: 'Barrier resin, issue 1',
      corrected: false,
    });
    expect(verdict?.figures).toMatchObject({ minPercent: 1.2, maxPercent: 2.4 });
    expect(verdict?.figures['percentByMass']).toBeCloseTo(1.8, 9);
    // 180 mL in 10/1.1 L: by volume it is another number.
    expect(verdict?.figures['percentByVolume']).toBeCloseTo(1.98, 9);
  });

  it('outside it stops the plan, and is kept with a nonconformity when it was mixed', async () => {
    const plan = await shop.post('/api/mixes/check', shop.envelope(bucket('B-2', 0.3)));
    expect(plan.body).toMatchObject({ stops: [{ rule: 'catalyst-outside-window', goesOn: 'shift lead' }] });
    const lot = await shop.act('/api/mixes', bucket('B-2', 0.3));
    expect(await ofLot('B-2')).toMatchObject([{ verdict: 'outside', detail: expect.stringContaining('1.2 to 2.4 %') }]);
    expect(await rulesAbout(shop, lot)).toEqual(['catalyst-outside-window']);
  });

  it('keeps its verdict when the data sheet changes; what is mixed later is judged by the new issue', async () => {
    await shop.act('/api/materials/RES-B/data-sheets', {
      issue: 'Barrier resin, issue 2',
      makerData: {
        catalystWindow: { min: 1, max: 1.5, unit: '%' },
        minimumBarcol: 40,
        layUpWindow: { min: 1, max: 24, unit: 'h' },
      },
    });
    expect(await ofLot('B-1')).toMatchObject([{ verdict: 'inside', source: 'Barrier resin, issue 1' }]);
    await shop.act('/api/mixes', bucket('B-3', 0.18));
    expect(await ofLot('B-3')).toMatchObject([{ verdict: 'outside', source: 'Barrier resin, issue 2' }]);
    expect(await shop.read('/api/materials/RES-B/data-sheets')).toMatchObject([{ issue: 'Barrier resin, issue 2' }]);
  });

  it('is judged again when what went in is corrected', async () => {
    const { inputs } = await shop.read<LotView>('/api/lots/B-2');
    const catalyst = inputs.find(({ lot }) => lot === 'CB-1');
    await shop.correct(String(catalyst?.id), { kind: 'lot input', amount: kg(0.2) });
    expect(await ofLot('B-2')).toMatchObject([
      { verdict: 'inside', corrected: true, source: 'Barrier resin, issue 1' },
    ]);
  });

  it('is not judged where there is none, and cannot be where no window is known', async () => {
    await shop.act('/api/mixes', { code: 'B-4', inputs: [{ lot: 'RB-1', amount: kg(10) }] });
    expect(await ofLot('B-4')).toEqual([]);
    await shop.receive('VE-9', 'RES-VE');
    await shop.act('/api/mixes', {
      ...bucket('B-5', 0.1),
      inputs: [
        { lot: 'VE-9', amount: kg(10) },
        { lot: 'CB-1', amount: kg(0.1) },
      ],
    });
    expect(await ofLot('B-5')).toMatchObject([{ verdict: 'cannot be judged' }]);
  });
});
