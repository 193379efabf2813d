import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { labelPath, type Labelled, type LabelStockView, type LabelTargetView } from '@hull-record/contracts';
import { LABEL_STOCK, LABEL_STOCK_NAMES, type LabelStockName } from '@hull-record/trade';
import { countRows } from '../support/fact-rows.js';
import { readLabels, type LabelPage } from '../support/read-labels.js';
import { openPaper } from '../support/read-pdf.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('VE-1', 'RES-VE', { expiresOn: '2026-07-19' });
  await shop.receive('C-1', 'MEKP');
  await shop.receive('M/1 Ü', 'MAT-450');
  await shop.mix('B-1', [
    { lot: 'VE-1', amount: kg(9.8) },
    { lot: 'C-1', amount: kg(0.2) },
  ]);
  await shop.act('/api/kits', { code: 'K-1', inputs: [{ lot: 'M/1 Ü', amount: kg(4) }] });
  await shop.act('/api/lots/VE-1/containers', { containers: [{ label: 'D-1', kind: 'drum', amount: kg(200) }] });
  await shop.startHull('86-1');
  await shop.act('/api/hulls/86-1/hins', { hin: 'TRZ00861A626' });
  await shop.startDeck('86-1-D');
}, 60_000);
afterAll(() => service.close());

type Asked = readonly { readonly of: Labelled; readonly code: string }[];

const ask = async (body: Fields): Promise<Response> =>
  fetch(`${service.url}/api/labels.pdf`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...(await service.signedIn()) },
    body: JSON.stringify(body),
  });

const print = async (labels: Asked, stock: LabelStockName, more: Fields = {}): Promise<Buffer> => {
  const answer = await ask({ stock, labels, ...more });
  if (answer.status !== 200) throw new Error(`${answer.status} ${await answer.text()}`);
  return Buffer.from(await answer.arrayBuffer());
};

const wordsOf = (page: LabelPage | undefined): string => (page?.texts ?? []).map(({ text }) => text).join(' ');

const STYRENE = 'Caution: Flammable, gives off styrene';

describe('A label', () => {
  it.each([
    ['lot', 'VE-1', ['Lot · resin', 'Vinyl ester resin', 'Expires 2026-07-19', 'Supplier lot S-VE-1', STYRENE]],
    ['lot', 'C-1', ['Lot · catalyst', 'MEKP catalyst', 'Caution: Burns skin and eyes', 'apart from promoter']],
    ['lot', 'B-1', ['Bucket', 'MEKP catalyst + Vinyl ester resin', 'Expires 2026-07-19', STYRENE, 'Makes heat']],
    ['lot', 'K-1', ['Kit', 'Chopped strand mat 450']],
    ['lot', 'M/1 Ü', ['Lot · glass', 'Chopped strand mat 450']],
    ['container', 'D-1', ['Drum · resin', 'Vinyl ester resin', 'Lot VE-1', 'Expires 2026-07-19', STYRENE]],
    ['part', '86-1-D', ['Part', 'Deck', 'Model TS86']],
    ['hull', '86-1', ['Hull', 'Model TS86', 'TS 86, open, 8.6 m']],
    ['equipment', 'MG-1', ['Equipment', 'Gauge', 'Mil gauge']],
    ['badge', 'REC-1', ['Badge', 'Receiving']],
  ] as const)('of the %s %s says what it is, in words and in its square code', async (of, code, words) => {
    const [page] = await readLabels(await print([{ of, code }], 'roll-100x50'), LABEL_STOCK['roll-100x50']);
    expect(page?.codes.map(({ text }) => text)).toEqual([labelPath({ of, code })]);
    const printed = wordsOf(page);
    for (const each of [code, ...words]) expect(printed.replace(/\s+/g, ' ')).toContain(each);
    expect(printed.includes('data sheet')).toBe(printed.includes('Caution'));
    expect(printed.includes('Caution')).toBe(words.some((each) => each.startsWith('Caution')));
  });

  it('of a badge does not name the person', async () => {
    const bytes = await print([{ of: 'badge', code: 'LAM-1' }], 'roll-62x29');
    const [page] = await readLabels(bytes, LABEL_STOCK['roll-62x29']);
    expect(wordsOf(page)).not.toContain('Person');
  });

  it('of a hull asked for by its HIN has the number of the builder', async () => {
    const bytes = await print([{ of: 'hull', code: 'TRZ00861A626' }], 'roll-62x29');
    expect(bytes.equals(await print([{ of: 'hull', code: '86-1' }], 'roll-62x29'))).toBe(true);
  });

  it('of a lot that was retested has its new last day', async () => {
    await shop.receive('G-9', 'GEL-W', { expiresOn: '2026-01-02' });
    const before = await print([{ of: 'lot', code: 'G-9' }], 'roll-62x29');
    await shop.act('/api/lots/G-9/retests', { enteredBy: 'QUA-1', expiresOn: '2026-03-01', result: 'As certified.' });
    const after = await print([{ of: 'lot', code: 'G-9' }], 'roll-62x29');
    expect(after.equals(before)).toBe(false);
    expect(wordsOf((await readLabels(after, LABEL_STOCK['roll-62x29']))[0])).toContain('Expires 2026-03-01');
  });
});

describe('A sheet of labels', () => {
  const everything: Asked = [
    { of: 'badge', code: 'LAM-1' },
    { of: 'lot', code: 'VE-1' },
    { of: 'hull', code: '86-1' },
    { of: 'lot', code: 'VE-1' },
    { of: 'equipment', code: 'MG-1' },
    { of: 'container', code: 'D-1' },
    { of: 'part', code: '86-1-D' },
  ];

  it('is answered as a PDF, in the order asked, and records nothing', async () => {
    const before = await countRows(service);
    const answer = await ask({ stock: 'a4-70x37', labels: everything, skip: 20 });
    expect(answer.headers.get('content-type')).toBe('application/pdf');
    expect(answer.headers.get('content-disposition')).toBe('inline; filename="labels.pdf"');
    const pages = await readLabels(Buffer.from(await answer.arrayBuffer()), LABEL_STOCK['a4-70x37']);
    const read = pages.map(({ codes }) =>
      [...codes].sort((a, b) => Math.round((a.y - b.y) / 40) || a.x - b.x).map(({ text }) => text),
    );
    const paths = everything.map(labelPath);
    expect(read).toEqual([paths.slice(0, 4), paths.slice(4)]);
    expect(await countRows(service)).toEqual(before);
  });

  it('has the same bytes when asked again, dated when the newest of it was recorded', async () => {
    const one = await print(everything, 'letter-67x25');
    expect(one.equals(await print(everything, 'letter-67x25'))).toBe(true);
    const [row] = await service.asOwner<{ at: Date }>(
      `select max(recorded_at) as at from fact.part where number = '86-1-D'`,
    );
    const paper = await openPaper(one);
    const { info } = (await paper.getMetadata()) as unknown as { info: Readonly<Record<string, string>> };
    expect(info['CreationDate']).toBe(`D:${row?.at.toISOString().replace(/\D/g, '').slice(0, 14)}Z`);
    await paper.loadingTask.destroy();
  });

  it('holds 500 labels', async () => {
    const paper = await openPaper(await print(Array(500).fill({ of: 'lot', code: 'VE-1' }) as Asked, 'letter-67x25'));
    expect(paper.numPages).toBe(17);
    await paper.loadingTask.destroy();
  });
});

describe('Labels are refused', () => {
  const lot = { of: 'lot', code: 'VE-1' };

  it('for codes that are not in the record, each named', async () => {
    const labels = [lot, { of: 'hull', code: '99-9' }, lot, { of: 'badge', code: 'VE-1' }];
    const answer = await ask({ stock: 'a4-70x37', labels });
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      type: '/problems/not-found',
      errors: [
        { pointer: '/labels/1/code', detail: 'There is no hull 99-9: check the code, or record it first.' },
        { pointer: '/labels/3/code', detail: 'There is no badge VE-1: check the code, or record it first.' },
      ],
    });
  });

  it.each([
    ['no stock of that name', { stock: 'a4', labels: [lot] }, '/stock'],
    ['no labels', { stock: 'a4-70x37', labels: [] }, '/labels'],
    ['more than 500', { stock: 'a4-70x37', labels: Array(501).fill(lot) }, '/labels'],
    ['a kind of thing that has none', { stock: 'a4-70x37', labels: [{ of: 'mold', code: 'M' }] }, '/labels/0/of'],
    ['places skipped that a sheet has not', { stock: 'a4-70x37', labels: [lot], skip: 24 }, '/skip'],
    ['places skipped on a roll', { stock: 'roll-62x29', labels: [lot], skip: 1 }, '/skip'],
  ])('with %s', async (_, body, pointer) => {
    const answer = await ask(body);
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ errors: [{ pointer }] });
  });

  it('with more on one than its stock has room for', async () => {
    const code = 'ก'.repeat(60);
    await shop.receive(code, 'RES-VE');
    const answer = await ask({ stock: 'letter-67x25', labels: [lot, { of: 'lot', code }] });
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      type: '/problems/label-too-small',
      errors: [{ pointer: '/labels/1/code' }],
    });
  });
});

describe('The table of label stock', () => {
  it('is the one that labels are drawn for', async () => {
    const table = await shop.read<readonly LabelStockView[]>('/api/label-stock');
    expect(table.map(({ name }) => name)).toEqual(LABEL_STOCK_NAMES);
    expect(table[0]).toEqual({ name: 'roll-62x29', ...LABEL_STOCK['roll-62x29'] });
  });
});

describe('A scanned path', () => {
  it.each([
    ['/l/lot/VE-1', { of: 'lot', code: 'VE-1', page: '#/lots/VE-1' }],
    ['/l/hull/86%2F7%20%C3%9C', { of: 'hull', code: '86/7 Ü', page: '#/hulls/86%2F7%20%C3%9C' }],
    ['/l/container/D-1\r\n', { of: 'container', code: 'D-1', page: null }],
    ['/l/badge/LAM-1', { of: 'badge', code: 'LAM-1', page: null }],
  ])('%s is resolved', async (path, target) => {
    const read = await shop.read<LabelTargetView>(`/api/label-target?path=${encodeURIComponent(path)}`);
    expect(read).toEqual(target);
  });

  it.each(['', '/l/lot/', '/l/tank/T1', '/api/lots/VE-1', '4006381333931', '/l/lot/%E4'])(
    '"%s" is none of ours',
    async (path) => {
      const { status, body } = await shop.get(`/api/label-target?path=${encodeURIComponent(path)}`);
      expect(status).toBe(400);
      expect(body).toMatchObject({
        type: '/problems/invalid-request',
        errors: [{ pointer: '/path', detail: expect.stringContaining('is not the path of one of our labels') }],
      });
    },
  );
});
