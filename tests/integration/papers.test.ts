import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { readPaper } from '../support/papers/read-paper.js';
import { printed } from '../support/read-record.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';
import { recordWhole } from '../support/whole-record.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await recordWhole(shop);
}, 60_000);
afterAll(() => service.close());

describe('The report of a lot', () => {
  it('is answered as a PDF with a file name of its own', async () => {
    const { headers, bytes } = await readPaper(service, '/api/lots/R-2/report.pdf');
    expect(headers.get('content-type')).toBe('application/pdf');
    expect(headers.get('content-disposition')).toBe('inline; filename="lot-report-R-2.pdf"');
    expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
  });

  it.each([
    ['what it is', 'Material Vinyl ester resin (RES-VE) Role resin Supplier Aldermoor Resins Supplier’s lot S-R-2'],
    ['how much came', 'Amount 1000 kg, weighed'],
    ['a hull with its HIN', '86-1 TRZ00861A626'],
    ['a place with its share of the role', '86-1 86-1-H layer L2 resin'],
    ['what went into a repair', 'repair R1 resin'],
    ['the share there', '80 %'],
    ['the lot made of it', 'T1-2 tank fill 400 kg metered'],
    ['what is left', 'Put into other lots 400'],
  ])('says %s', async (_what, words) => {
    const { text } = await readPaper(service, '/api/lots/R-2/report.pdf');
    expect(text).toContain(printed(words));
  });

  it('of a bucket says what it is made of, and what that rests on', async () => {
    const { text } = await readPaper(service, '/api/lots/B-1/report.pdf');
    expect(text).toContain(printed('R-2 S-R-2 Vinyl ester resin resin 78.4 %'));
    expect(text).toContain(printed('Assumes a well-mixed tank'));
    expect(text).toContain(printed('86-1-H repair R1 resin 0.235 kg'));
  });

  it('names hulls that possibly hold it apart, and why', async () => {
    await shop.startHull('86-2');
    const unidentified = { role: 'resin', looks: 'a drum without a label' };
    await shop.layer('86-2', 'L2', [{ unidentified, amount: kg(5) }]);
    const { text } = await readPaper(service, '/api/lots/R-1/report.pdf');
    expect(text).toContain(printed('Hulls that possibly hold it They hold material that nobody could name'));
    expect(text).toMatch(/possiblyholdit.*86-2Partstarted/);
  });

  it('has the same bytes until something it rests on changes', async () => {
    const before = await readPaper(service, '/api/lots/M-1/report.pdf');
    await shop.receive('M-2', 'MAT-450');
    expect((await readPaper(service, '/api/lots/M-1/report.pdf')).bytes.equals(before.bytes)).toBe(true);
    await shop.setState('M-1', 'held');
    const after = await readPaper(service, '/api/lots/M-1/report.pdf');
    expect(after.text).toContain(printed('Held for a test ADMIN'));
    expect(after.text).toContain(printed('Held: it may not be used until it is released.'));
  });

  it('is not there for a lot that is not there', async () => {
    expect((await shop.get('/api/lots/NONE/report.pdf')).status).toBe(404);
  });
});

describe('The sheet of the hold points of a part', () => {
  it.each([
    ['which part and hull', 'Part 86-1-H Kind Hull molding Hull 86-1 HIN TRZ00861A626'],
    ['how many are signed', '2 of 2 signed'],
    ['what was made, by whom', 'HP 1, layer 1, Gel coat (L1) Made 5 Jan 2026'],
    ['the climate beside its limits', 'Made by LAM-1 Entered by ADMIN Climate air 21.4 °C'],
    ['a reading outside, and its concession', 'outside use as is under concession C-7'],
    ['who signed', 'HP 1 signed by INS-1'],
    ['how far that is known', 'identity proved'],
  ])('says %s', async (_what, words) => {
    const { text } = await readPaper(service, '/api/parts/86-1-H/hold-points.pdf');
    expect(text).toContain(printed(words));
  });

  it('has a field for what is made and not signed, with what is open and not complete', async () => {
    await shop.startHull('86-3');
    const gel = await shop.layer('86-3', 'L1', [{ lot: 'G-1', amount: kg(18) }]);
    await shop.film(gel, [[22, 24]]);
    await shop.defect('86-3-H', { layer: 'L1' });
    const before = await readPaper(service, '/api/parts/86-3-H/hold-points.pdf');
    for (const words of [
      ...['0 of 2 signed', 'HP 1: not signed', 'It was made by LAM-1.', 'Wet film: 1 of 3 spots read.', 'D1 Dry spot'],
      'HP 2 not signed: the layer is not made',
    ]) {
      expect(before.text).toContain(printed(words));
    }
    expect((await readPaper(service, '/api/parts/86-3-H/hold-points.pdf')).bytes.equals(before.bytes)).toBe(true);
    await shop.sign(gel);
    expect((await readPaper(service, '/api/parts/86-3-H/hold-points.pdf')).text).toContain(printed('1 of 2 signed'));
  });

  it('is not there for a part that is not there', async () => {
    expect((await shop.get('/api/parts/NONE/hold-points.pdf')).status).toBe(404);
  });
});

describe('The order to repair defects of a part', () => {
  const path = '/api/parts/86-4-H/repair-order.pdf';
  let ids: readonly string[];
  beforeAll(async () => {
    await shop.startHull('86-4');
    await shop.layer('86-4', 'L2', [{ lot: 'T1-2', amount: kg(20) }]);
    ids = [await shop.defect('86-4-H', { layer: 'L2' }), await shop.defect('86-4-H', { kind: 'blister', grade: '6M' })];
    await shop.dispose('defect', ids[0] ?? '', 'repair');
  });

  it.each([
    ['which part and hull', 'Part 86-4-H Kind Hull molding Hull 86-4'],
    ['where the defect is, and in which layer', 'D1 Dry spot'],
    ['its grade', 'grade 6M (ASTM D714)'],
    ['what was decided', 'repair: for a test (ADMIN'],
    ['the map', '2 marks. A girth-by-station expansion'],
    ['the plies', 'Layer L2 Plies 2 x mat 450'],
    ['the lots with those of the supplier', 'T1-2'],
    ['what is to come', '3 Bulk laminate 4 x mat 450 to come'],
    ['never to mix them', 'Never mix catalyst and promoter directly.'],
    ['that dust is dangerous', 'Fine dust can burn or explode'],
    ['who has the last word', 'local codes and the authority having jurisdiction come first'],
    ['what is filled in', 'Accepted by another person, day and time D1 D2 further'],
  ])('says %s', async (_what, words) => {
    expect((await readPaper(service, path)).text).toContain(printed(words));
  });

  it('is about the defects that are named, by mark or id, again and again or in a list', async () => {
    for (const query of ['?defect=D2', `?defect=${ids[1] ?? ''}`]) {
      const { text } = await readPaper(service, path + query);
      expect(text).toContain(printed('1 mark. A girth'));
      expect(text).not.toContain(printed('D1 Dry spot'));
    }
    const both = await readPaper(service, `${path}?defect=D1,D2`);
    expect((await readPaper(service, `${path}?defect=D2&defect=d1`)).text).toBe(both.text);
  });

  it('refuses what is no defect of the part, and points at it', async () => {
    const { status, body } = await shop.get(`${path}?defect=D1,D9`);
    expect([status, body]).toMatchObject([400, { errors: [{ pointer: '/defect/1' }] }]);
    expect((await shop.get(`${path}?defect=`)).status).toBe(400);
    expect((await shop.get('/api/parts/NONE/repair-order.pdf')).status).toBe(404);
  });

  it('says of a part without open defects that there is nothing to repair', async () => {
    const { text } = await readPaper(service, '/api/parts/86-1-D/repair-order.pdf');
    expect(text).toContain(printed('there is nothing to repair'));
    expect(text).not.toContain('Taperratio');
  });
});
