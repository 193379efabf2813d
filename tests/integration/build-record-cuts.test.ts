import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { openPaper } from '../support/read-pdf.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('C-G', 'GEL-W', { expiresOn: '2026-12-31' });
  const amount = { quantity: '200', unit: 'kg', basis: 'weighed' };
  await shop.act('/api/lots/C-G/containers', { containers: [{ label: 'DRUM-7', kind: 'drum', amount }] });
  await shop.act('/api/equipment', { code: 'MG-7', kind: 'gauge', description: 'Mil gauge' });
  await shop.act('/api/equipment/MG-7/checks', { what: 'reference film', good: true });
  await shop.act('/api/molds/M-86-1/care', { what: 'waxed', doneBy: ['LAM-1'] });
  await shop.startHull('C1');
  const used = [{ container: 'DRUM-7', amount: { quantity: '18', unit: 'kg', basis: 'weighed' } }];
  const layer = await shop.layer('C1', 'L1', used, { note: 'LAM-1 says the booth was cold' });
  const spots = ['17', '18', '21'].map((value) => ({ value }));
  const set = { kind: 'layer record', note: 'Pelham says the booth was cold' };
  await shop.act('/api/corrections', { corrects: layer, reason: 'misheard', set });
  const place = { surface: 'shell', side: 'port', fromTransomMm: 3_000, girthMm: 500 };
  const defect = await shop.act('/api/parts/C1-H/defects', { kind: 'chip', place, note: 'Quorn dropped a roller' });
  const repair = await shop.act('/api/parts/C1-H/repairs', {
    ...{ defects: [defect], procedure: 'RP-1', plies: [], doneBy: ['PAT-1'], enteredBy: 'PAT-1' },
  });
  const accepted = { enteredBy: 'INS-1', accepted: true, note: 'Tarn looked twice' };
  await shop.act(`/api/repairs/${repair}/acceptances`, accepted);
  await shop.act('/api/hulls/C1/life', { what: 'demolded', note: 'Ludlow helped' });
  await shop.act(`/api/layers/${layer}/readings`, { what: 'wet film', unit: 'mil', spots, equipment: 'MG-7' });
});
afterAll(() => service.close());

const textOf = async (query: string): Promise<string> => {
  const answer = await fetch(`${service.url}/api/hulls/C1/build-record.pdf${query}`, {
    headers: await service.signedIn(),
  });
  const paper = await openPaper(Buffer.from(await answer.arrayBuffer()));
  const pages: string[] = [];
  for (let number = 1; number <= paper.numPages; number += 1) {
    const { items } = await (await paper.getPage(number)).getTextContent();
    pages.push(items.map((item) => ('str' in item ? item.str : '')).join(' '));
  }
  await paper.loadingTask.destroy();
  return pages.join(' ').replaceAll(/\s+/g, ' ');
};

/** What people wrote freely; invented. */
const WRITTEN = [
  ...['LAM-1 says the booth was cold', 'Pelham says the booth was cold', 'Quorn dropped a roller'],
  ...['Tarn looked twice', 'Ludlow helped'],
];

describe('the cuts of a build record', () => {
  it('inside the plant it tells people by badge, with what they noted', async () => {
    const text = await textOf('');
    expect(text).toContain('Cut internal: people by badge');
    for (const written of WRITTEN) expect(text).toContain(written);
  });

  it('for the dealer it tells roles, and nothing that somebody noted', async () => {
    const text = await textOf('?cut=dealer');
    expect(text).toContain('for the dealer: people by role');
    expect(text).not.toMatch(/LAM-1|booth was cold/);
    for (const written of WRITTEN) expect(text).not.toContain(written);
    expect(text).toContain('misheard');
    expect(text).toContain('note changed, left out here');
    expect(text).toContain('laminator');
  });

  it('for an outside expert it numbers people', async () => {
    const text = await textOf('?cut=expert');
    expect(text).not.toContain('LAM-1');
    expect(text).toMatch(/person \d says the booth was cold/);
  });

  it('of another name is refused, and the cuts are named', async () => {
    const { status, body } = await shop.get('/api/hulls/C1/build-record.pdf?cut=press');
    expect(status).toBe(400);
    expect(body).toMatchObject({ errors: [{ pointer: '/cut', detail: expect.stringContaining('dealer') }] });
  });
});

describe('what the build record tells of readings and equipment', () => {
  it('tells the state of the mold, the pull and the last care before it', async () => {
    expect(await textOf('')).toMatch(/M-86-1, state 1, pull 1; waxed /);
  });

  it('names the container of a lot, and the last day of its use', async () => {
    const text = await textOf('');
    expect(text).toContain('C-G of DRUM-7');
    expect(text).toContain('last day of use 2026-12-31');
  });

  it('draws readings between their limits, each limit with its number', async () => {
    expect(await textOf('')).toMatch(/16 mil 20 mil/);
  });

  it('names the gauge with its check state then; and says when it is found unfit later', async () => {
    expect(await textOf('')).toMatch(/MG-7 gauge, Mil gauge .* good on .* \(reference film\)/);
    const good = new Date().toISOString();
    await shop.act('/api/equipment/MG-7/checks', { what: 'reference film', good: false });
    const before = new Date().toISOString();
    await shop.act('/api/equipment/MG-7/checks', { what: 'reference film', good: true });
    expect(await textOf('')).toMatch(/\(reference film\) ?; found unfit on/);
    expect(await textOf('')).toContain('suspect: the equipment may have been unfit then');
    expect(await textOf(`?asOf=${encodeURIComponent(before)}`)).toContain('found unfit on');
    expect(await textOf(`?asOf=${encodeURIComponent(good)}`)).not.toMatch(/unfit|suspect/);
  });

  it('tells a check that is withdrawn among the corrections', async () => {
    const id = await shop.act('/api/equipment/MG-7/checks', {
      ...{ what: 'inspection', good: true, happenedAt: '2026-01-01T08:00:00.000Z' },
    });
    await shop.act('/api/corrections', { corrects: id, reason: 'the gauge was not here then' });
    expect(await textOf('')).toMatch(/Check of MG-7, inspection .* withdrawn the gauge was not here then/);
  });
});
