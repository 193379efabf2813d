import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { csvCell } from '../../apps/service/src/platform/http/csv.js';
import { qpdfFaults } from '../support/papers/qpdf.js';
import { outOfOrder } from '../support/papers/paper.js';
import { structureFaults } from '../support/papers/structure-faults.js';
import { readPages, solid } from '../support/read-pdf.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let hold: string;
const at = (day: string): Fields => ({ happenedAt: `${day}T15:00:00Z` });

const get = async (path: string, as?: string): Promise<{ status: number; bytes: Buffer }> => {
  const answer = await fetch(`${service.url}/api/${path}`, { headers: await service.signedIn(as) });
  return { status: answer.status, bytes: Buffer.from(await answer.arrayBuffer()) };
};
const words = async (path: string): Promise<string> => solid(await readPages((await get(path)).bytes));
const file = async (path: string): Promise<string> => (await get(path)).bytes.toString('utf8');

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('G-17', 'RES-VE');
  for (const hull of ['H1', 'H2']) {
    await shop.startHull(hull);
    await shop.layer(hull, 'L2', [{ lot: 'G-17', amount: kg(5) }]);
  }
  await shop.act('/api/hulls/H2/life', { what: 'at dealer', dealer: 'NLM', ...at('2026-01-22') });
  await shop.act('/api/hulls/H2/life', { what: 'sold to first purchaser', ...at('2026-02-01') });
  const owner = { name: '=HYPERLINK("x")', address: '2 Quay Street, Calder Bay' };
  await shop.act('/api/hulls/H2/owners', { what: 'first purchaser', owner });
  const later = { name: 'Later, "Bo"', address: '9 Mole Lane, Flat 2\r\nCalder Bay' };
  await shop.act('/api/hulls/H2/owners', { what: 'later owner', owner: later, ...at('2026-02-20') });
  hold = await shop.act('/api/lots/G-17/holds', { kind: 'safety', reason: 'gel time', ...at('2026-02-25') });
  await shop.act(`/api/holds/${hold}/dispositions`, { hulls: ['H2'], what: 'found', note: '+soft at the keel' });
  const decision = { decision: 'substantial risk of injury', discoveredOn: '2026-03-02', decidedBy: 'QUA-1', why: 'x' };
  await shop.act(`/api/holds/${hold}/duty-decisions`, { ...decision, ...at('2026-03-02') });
  const contents = {
    ...{ defect: 'The bond may not have cured.', hazard: 'It may let go.', measures: 'A dealer renews it.' },
    ...{ undertaking: 'Free of charge.', manufacturer: 'Invented Boats', address: '1 Slip Road', make: 'TS' },
  };
  await shop.act(`/api/holds/${hold}/notices`, { code: 'DN-1', contents, ...at('2026-03-03') });
}, 60_000);
afterAll(() => service.close());

describe('papers of a hold and of its notice', () => {
  it.each([
    ['the list of held hulls', () => `holds/${hold}/hulls.pdf`],
    ['the letters', () => 'notices/DN-1/letters.pdf'],
    ['the draft of the initial report', () => 'notices/DN-1/initial-report.pdf'],
    ['the draft of the follow-up report', () => 'notices/DN-1/follow-up-report.pdf'],
  ])('%s is a sound file, and the same bytes for the same facts', async (_name, path) => {
    const { status, bytes } = await get(path());
    expect(status).toBe(200);
    expect(await structureFaults(bytes)).toEqual([]);
    expect(qpdfFaults(bytes)).toEqual([]);
    expect((await get(path())).bytes.equals(bytes)).toBe(true);
  });

  it('the list says of each hull where it is and what was said, and what is open', async () => {
    const paper = await words(`holds/${hold}/hulls.pdf`);
    for (const part of [
      'LotG-17',
      '2reached,0disposedof,2open',
      'withowner,NorthlightMarine',
      '+softatthekeel',
      'OPEN',
    ])
      expect(paper).toContain(part);
  });

  it('letters hold what 46 USC 4310(d) and 33 CFR 179.09 list, and say that people decide', async () => {
    const paper = await words('notices/DN-1/letters.pdf');
    for (const part of [
      'Thebondmaynothavecured.',
      'Itmayletgo.',
      'Adealerrenewsit.',
      'Freeofcharge.',
      'InventedBoats,1SlipRoad',
    ])
      expect(paper).toContain(part);
    expect(paper).toContain('TS86,open,8.6m,madein2026-01');
    expect(paper).toContain('responsiblepersonwithcounsel');
    expect(paper).toContain('2QuayStreet');
  });

  it('letters keep the lines of an address, and the first page counts them and names whom no letter reaches', async () => {
    const paper = await words('notices/DN-1/letters.pdf');
    expect(outOfOrder(paper, ['Dealers', '1 letter', 'First purchasers', '1 letter', 'Later owners', '1 letter'])).toBe(
      undefined,
    );
    const pages = await readPages((await get('notices/DN-1/letters.pdf')).bytes);
    const lines = pages.flat().map(({ text }) => text.replaceAll('\u00a0', ' '));
    const from = lines.findIndex((line) => line.includes('Mole'));
    expect(lines.slice(from, from + 2)).toEqual(['9 Mole Lane, Flat 2', 'Calder Bay']);
    expect(paper).not.toMatch(/U\+000D/);
  });

  it('the reports give the figures of the rule and no personal data', async () => {
    const initial = await words('notices/DN-1/initial-report.pdf');
    expect(initial).toContain('1,thebestestimateofthetotalnumberpotentiallyaffected');
    expect(initial).toContain('2026-04-01noticedue');
    const followUp = await words('notices/DN-1/follow-up-report.pdf');
    expect(followUp).toContain('1unitsinwhichthedefectwasdiscovered');
    expect(`${initial}${followUp}`).not.toMatch(/QuayStreet|HYPERLINK/);
  });

  it('sheets run nothing when they are opened', async () => {
    const merge = await file('notices/DN-1/recipients.csv');
    expect(merge.split('\r\n')[0]).toContain('"kind","name","address"');
    expect(merge).toContain(`"'=HYPERLINK(""x"")"`);
    expect(merge).toContain('"Later, ""Bo""","9 Mole Lane, Flat 2\r\nCalder Bay"');
    expect(await file(`holds/${hold}/hulls.csv`)).toContain(`"'+soft at the keel"`);
    expect(['=1', ' -1', '@x', '＝1', '\t=1', 'a"b', null, -1].map(csvCell)).toEqual([
      ...[`"'=1"`, `"' -1"`, `"'@x"`, `"'＝1"`, `"'\t=1"`, '"a""b"', '""', '"-1"'],
    ]);
  });

  it('with personal data are for who may see owners alone', async () => {
    for (const path of ['letters.pdf', 'recipients.csv', 'recipients'])
      expect([path, (await get(`notices/DN-1/${path}`, 'QUA-1')).status]).toEqual([path, 403]);
    expect((await get('notices/DN-1/initial-report.pdf', 'QUA-1')).status).toBe(200);
  });
});
