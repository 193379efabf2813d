import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { printed, readRecord } from '../support/read-record.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

it('the build record prints touch-ups, outside repairs with what is known of them, re-inspections and scrapped parts', async () => {
  await shop.receive('GEL-P', 'GEL-W');
  await shop.startHull('P1');
  const spots = [{ zone: 'port topside', kind: 'fish-eye', count: 6, largestMm: 4 }];
  const touched = await shop.act('/api/parts/P1-H/touch-ups', {
    spots,
    doneBy: ['PAT-1'],
    used: [{ lot: 'GEL-P', amount: kg(0.4) }],
  });
  await shop.act(`/api/touch-ups/${touched}/acceptances`, { enteredBy: 'INS-1', accepted: true });
  const outside = { at: 'Saltmere Boats', toldBy: 'invoice 118' };
  const repair = await shop.act('/api/parts/P1-H/repairs', {
    defects: [await shop.defect('P1-H')],
    procedure: 'Not known.',
    outside,
  });
  await shop.judge(repair, true);
  await shop.act(`/api/repairs/${repair}/re-inspections`, { enteredBy: 'INS-1', passed: false, note: 'a halo' });
  await shop.act('/api/parts/P1-H/scrapping', { reason: 'prerelease' });
  const { text } = await readRecord(service, 'P1');
  for (const words of [
    'Touch-up: 6 × fish eye, port topside, up to 4 mm',
    'GEL-P',
    'outside repair, at Saltmere Boats, recorded from invoice 118',
    'inspected again by INS-1',
    'failed, a halo',
    'SCRAPPED: prerelease',
  ])
    expect(text).toContain(printed(words));
});
