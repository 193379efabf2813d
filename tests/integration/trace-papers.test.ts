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
  await shop.startHull('86-2');
  await shop.layer('86-2', 'L2', [{ lot: 'R-1', amount: kg(5) }]);
}, 60_000);
afterAll(() => service.close());

const paper = (query = '') => readPaper(service, `/api/hulls/86-1/trace.pdf${query}`);

describe('the trace of a hull on paper', () => {
  it('is a PDF with a name of its own', async () => {
    const { headers } = await paper();
    expect(headers.get('content-type')).toBe('application/pdf');
    expect(headers.get('content-disposition')).toBe('inline; filename="trace-86-1.pdf"');
  });

  it.each([
    ['which hull, its HIN and where it is', 'Hull 86-1 HIN and where it is TRZ00861A626'],
    ['how much of how many lots is in it', 'In 86-1 there are'],
    ['what the picture is of', 'Where it came from'],
    ['what its widths are', 'Bars and ribbons are kilograms that are in these hulls, on one scale.'],
    ['a lot of the tank, with the mass, the share and the basis', 'R-2 received, Vinyl ester resin'],
    ['what it does not say', 'A lot named here is associated with the hull'],
  ])('says %s', async (_what, words) => {
    expect((await paper()).text).toContain(printed(words));
  });

  it('of two hulls names both with where each is, and the lots of both', async () => {
    const { text, headers } = await paper('?also=86-2');
    expect(headers.get('content-disposition')).toBe('inline; filename="trace-86-1_86-2.pdf"');
    expect(text).toContain(printed('Hull 86-1, 86-2 86-1 TRZ00861A626'));
    expect(text).toContain(printed('In 86-1, 86-2 there are'));
    expect((await readPaper(service, '/api/hulls/86-2/trace.pdf')).text).not.toContain('R-2received');
  });

  it('of many hulls has a name that a disk takes', async () => {
    for (const number of ['86-3', '86-4']) await shop.startHull(number);
    const { headers } = await paper('?also=86-2,86-3,86-4');
    expect(headers.get('content-disposition')).toBe('inline; filename="trace-86-1_and_3_more.pdf"');
  });

  it('has the same bytes until something it rests on changes', async () => {
    const before = await paper();
    await shop.receive('N-1', 'MAT-450');
    expect((await paper()).bytes.equals(before.bytes)).toBe(true);
    await shop.setState('R-2', 'held');
    const after = await paper();
    expect(after.bytes.equals(before.bytes)).toBe(false);
    expect(after.text).toMatch(/R-2received,Vinylesterresin.*?held/);
  });

  it.each([
    ['hulls/NONE/trace.pdf', 404, undefined],
    ['hulls/86-1/trace.pdf?also=NONE', 400, '/also'],
    [`hulls/86-1/trace.pdf?also=${Array.from({ length: 20 }, (_, i) => `H${i}`).join(',')}`, 400, '/also'],
  ])('of %s is refused by its name', async (path, status, pointer) => {
    const answer = await shop.get(`/api/${path}`);
    expect(answer.status).toBe(status);
    const { errors } = answer.body as unknown as { errors?: { pointer: string }[] };
    expect(errors?.[0]?.pointer).toBe(pointer);
  });
});
