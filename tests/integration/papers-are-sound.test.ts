import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { looked } from '../support/looked.js';
import { CHECKED_BY, qpdfFaults } from '../support/papers/qpdf.js';
import { WRITINGS } from '../support/papers/scripts.js';
import { structureFaults } from '../support/papers/structure-faults.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
import { recordWhole } from '../support/whole-record.js';
import { FREEZE } from '../support/write-samples-cases.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  const { hull } = await recordWhole(shop);
  expect(hull).toBe('86-1');
  for (const [, note] of WRITINGS) await shop.defect('86-1-H', { layer: 'L2', note });
  await shop.act('/api/equipment/MG-1/checks', { what: 'reference film', good: true });
  await shop.act('/api/equipment/MG-1/checks', { what: 'reference film', good: false });
  await notified();
  await shop.act('/api/cases', { code: 'C-1', title: 'Blisters' });
  await shop.act('/api/cases/C-1/settings', FREEZE);
  await looked(shop, 'C-1');
}, 120_000);
afterAll(() => service.close());

let hold: string;
/** A notice to the dealer that a hull is with. */
const notified = async (): Promise<void> => {
  hold = await shop.act('/api/lots/R-2/holds', { kind: 'safety', reason: 'gel time' });
  const decided = { discoveredOn: '2026-03-02', decidedBy: 'QUA-1', why: 'bond', happenedAt: '2026-03-02T15:00:00Z' };
  await shop.act(`/api/holds/${hold}/duty-decisions`, { ...decided, decision: 'substantial risk of injury' });
  const words = { defect: 'It may not be cured.', hazard: 'It may let go.', measures: 'A dealer renews it.' };
  const maker = { manufacturer: 'Invented Boats', address: '1 Slip Road', make: 'TS', undertaking: 'Free of charge.' };
  await shop.act(`/api/holds/${hold}/notices`, { code: 'DN-1', contents: { ...words, ...maker } });
};

const bytesOf = async (answer: Response): Promise<Buffer> => {
  if (answer.status !== 200) throw new Error(`${answer.status} ${await answer.text()}`);
  return Buffer.from(await answer.arrayBuffer());
};

const get = async (path: string): Promise<Buffer> =>
  bytesOf(await fetch(`${service.url}/api/${path}`, { headers: await service.signedIn() }));

const labels = async (stock: string): Promise<Buffer> =>
  bytesOf(
    await fetch(`${service.url}/api/labels.pdf`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', ...(await service.signedIn()) },
      body: JSON.stringify({ stock, labels: [...LABELLED] }),
    }),
  );

const LABELLED = [
  { of: 'lot', code: 'R-1' },
  { of: 'hull', code: '86-1' },
  { of: 'equipment', code: 'MG-1' },
];

const PAPERS: readonly (readonly [name: string, make: () => Promise<Buffer>])[] = [
  ['build record for the plant', () => get('hulls/86-1/build-record.pdf')],
  ['build record for the dealer', () => get('hulls/86-1/build-record.pdf?cut=dealer')],
  ['build record for an outside expert', () => get('hulls/86-1/build-record.pdf?cut=expert')],
  ['lot report', () => get('lots/R-2/report.pdf')],
  ['hold-point sheet', () => get('parts/86-1-H/hold-points.pdf')],
  ['repair order', () => get('parts/86-1-H/repair-order.pdf')],
  ['equipment recall list', () => get('equipment/MG-1/recall.pdf')],
  ['trace of a lot', () => get('lots/R-2/trace.pdf')],
  ['trace of a hull', () => get('hulls/86-1/trace.pdf')],
  ['list of held hulls', () => get(`holds/${hold}/hulls.pdf`)],
  ['letters of a notice', () => get('notices/DN-1/letters.pdf')],
  ['initial report to the authority', () => get('notices/DN-1/initial-report.pdf')],
  ['follow-up report to the authority', () => get('notices/DN-1/follow-up-report.pdf')],
  ['inquiry report', () => get('cases/C-1/looks/1/report.pdf')],
  ['sheet of labels', () => labels('a4-70x37')],
  ['roll of labels', () => labels('roll-62x29')],
];

describe(`Papers, checked by ${CHECKED_BY}`, () => {
  it.each(PAPERS)('%s: nothing is wrong with the file', async (_name, make) => {
    const bytes = await make();
    expect(await structureFaults(bytes)).toEqual([]);
    expect(qpdfFaults(bytes)).toEqual([]);
  });
});

describe('What checks papers', () => {
  const spoilt = async (from: RegExp, to: string): Promise<readonly string[]> => {
    const raw = (await labels('roll-62x29')).toString('latin1');
    expect(raw).toMatch(from);
    const bytes = Buffer.from(raw.replace(from, to), 'latin1');
    return [...(await structureFaults(bytes)), ...qpdfFaults(bytes)];
  };

  it.each([
    ['an offset that points beside its object', /\n0000\d(\d{5}) 00000 n/, '\n00009$1 00000 n'],
    ['a page that is not there', /\/Kids \[\d+ 0 R/, '/Kids [99999 0 R'],
    ['a stream that is cut short', /stream\n[^]{40}/, 'stream\n'],
  ])('finds %s', async (_name, from, to) => {
    expect(await spoilt(from, to)).not.toEqual([]);
  });
});
