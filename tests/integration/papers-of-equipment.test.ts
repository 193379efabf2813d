import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { SuspectPage } from '@hull-record/contracts';
import { readPaper } from '../support/papers/read-paper.js';
import { printed } from '../support/read-record.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
const path = '/api/equipment/MG-1/recall.pdf';
const check = (good: boolean, more: Fields = {}): Promise<string> =>
  shop.act('/api/equipment/MG-1/checks', { what: 'reference film', good, ...more });

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('G-1', 'GEL-W');
  for (const hull of ['71', '72', '73']) await shop.startHull(hull);
  const used = [{ lot: 'G-1', amount: kg(18) }];
  const [before, within, after] = [
    await shop.layer('71', 'L1', used),
    await shop.layer('72', 'L1', used),
    await shop.layer('73', 'L1', used),
  ];
  await shop.film(before, [[16, 18]]);
  await check(true, { certificate: 'C-88' });
  await shop.film(within, [
    [18, 20],
    [22, 24],
  ]);
  await check(false, { note: 'worn notch' });
  await check(true);
  await shop.film(after, [[16, 18]]);
}, 60_000);
afterAll(() => service.close());

describe('The recall list of equipment', () => {
  it.each([
    ['which equipment', 'Equipment MG-1 Kind gauge Description Mil gauge'],
    ['its source', 'ISO 9001:2015 7.1.5.2'],
    ['how much is to be looked at', '1 window in which it may have been unfit; 2 entries to be looked at again.'],
    ['a good check', 'Reference film certificate C-88'],
    ['a bad one', 'worn notch no value recorded BAD open, no disposition'],
    ['when a window opens', 'Opens after the last good check, 5 Jan 2026'],
    ['a reading with its value as it was', '72 72-H layer L1, spot 1 Wet film 18 to under 20 mil'],
    ['that it is suspect', 'suspect, not decided'],
    ['that nothing was sprayed', 'Nothing was sprayed or dispensed with it in this window.'],
  ])('says %s', async (_what, words) => {
    expect((await readPaper(service, path)).text).toContain(printed(words));
  });

  it('lists what the service lists as suspect, and nothing before or after', async () => {
    const { text } = await readPaper(service, path);
    const { items } = await shop.read<SuspectPage>('/api/equipment/MG-1/suspects');
    expect(items.map(({ part }) => part)).toEqual(['72-H', '72-H']);
    expect(text).not.toContain('71-H');
    expect(text).not.toContain('73-H');
  });

  it('has the same bytes until something it rests on changes, such as a decision about a reading', async () => {
    const before = await readPaper(service, path);
    await shop.receive('G-2', 'GEL-W');
    expect((await readPaper(service, path)).bytes.equals(before.bytes)).toBe(true);
    const { items } = await shop.read<SuspectPage>('/api/equipment/MG-1/suspects');
    await shop.dispose('reading', items[0]?.id ?? '', 'use as is', 'C-9');
    expect((await readPaper(service, path)).text).toContain(printed('use as is under concession C-9'));
  });

  it('of a gun lists what was sprayed while it may have been unfit', async () => {
    await shop.act('/api/equipment', { code: 'G-9', kind: 'gun', description: 'Chopper gun' });
    await shop.receive('VE-1', 'RES-VE');
    await shop.receive('CAT-1', 'MEKP');
    await shop.act('/api/guns/G-9/hook-ups', { feed: 'resin', lot: 'VE-1' });
    await shop.mix('B-9', [
      { gun: 'G-9', feed: 'resin', amount: kg(3) },
      { lot: 'CAT-1', amount: kg(0.06) },
    ]);
    await shop.layer('71', 'L2', [{ gun: 'G-9', feed: 'resin', amount: kg(10) }]);
    await shop.act('/api/equipment/G-9/checks', { what: 'inspection', good: false });
    const { text } = await readPaper(service, '/api/equipment/G-9/recall.pdf');
    for (const words of [
      'no good check is recorded before',
      'in no hull of no part into lot B-9 Lot VE-1 3 kg',
      '71 71-H layer L2 Lot VE-1 10 kg',
    ]) {
      expect(text).toContain(printed(words));
    }
  });

  it('is not there for equipment that is not there', async () => {
    expect((await shop.get('/api/equipment/NONE/recall.pdf')).status).toBe(404);
  });
});
