import { describe, expect, it } from '@jest/globals';
import { drawTracePaper, type TraceView } from '@hull-record/paper';
import { layOutTrace } from '../../../libs/paper/src/trace/trace-layout.js';
import { pageFaults } from '../../support/papers/page-faults.js';
import { drawn, LONG_NAME, outOfOrder, PAPER, structureOf } from '../../support/papers/paper.js';
import { readAlternatives } from '../../support/papers/read-images.js';

const hull = (i: number) => ({ id: `h${i}`, code: `TS62-${i}`, kg: 2 });
const row = (code: string) => ({ code, what: 'hull', kg: '2 kg', share: 'under 0.1 %', basis: 'metered', now: '' });

/** A lot that went into two buckets, and from them into some hulls, of which one only possibly; invented. */
const aTrace = (hulls: number, changes: Partial<TraceView> = {}): TraceView => ({
  ...PAPER,
  ...{
    of: 'lot' as const,
    code: 'VE-12',
    identity: [['Supplier', 'Aldermoor Resins']],
    leftOut: null,
    assumes: 'Assumes well-mixed tanks.',
  },
  says: `Lot VE-12 is in ${hulls} hulls.`,
  columns: [
    { title: 'received lots', nodes: [{ id: 'a', code: 'VE-12', kg: 200 }] },
    { title: 'mixtures, kits', nodes: [{ id: 'm', code: 'MIX-1', kg: 2 * hulls }] },
    {
      title: 'hulls and parts',
      nodes: [...Array.from({ length: hulls }, (_, i) => hull(i)), { id: 'p', code: 'TS62-P', kg: null }],
    },
  ],
  links: [
    { from: 'a', to: 'm', kg: 2 * hulls },
    ...Array.from({ length: hulls }, (_, i) => ({ from: 'm', to: `h${i}`, kg: 2 })),
  ],
  rows: Array.from({ length: hulls }, (_, i) => row(`TS62-${i}`)),
  ...changes,
});
const draw = (view: TraceView) => drawn((created) => drawTracePaper(view, created));

describe('a trace on paper', () => {
  it('is as wide as its kilograms, on one scale, from one bar to the next', () => {
    const { boxes, ribbons } = layOutTrace(aTrace(4), 510);
    const [lot, mix] = boxes;
    expect((lot?.bar ?? 0) / (mix?.bar ?? 1)).toBeCloseTo(200 / 8, 6);
    expect(ribbons[0]?.width).toBeCloseTo(mix?.bar ?? 0, 6);
    expect(ribbons.slice(1).reduce((sum, { width }) => sum + width, 0)).toBeCloseTo(mix?.bar ?? 0, 6);
  });

  it('draws as one what has no room in a column, with all its kilograms', () => {
    const { boxes, ribbons, height } = layOutTrace(aTrace(100), 510);
    expect(boxes).toHaveLength(18);
    expect(boxes.at(-1)).toMatchObject({ code: 'and 86 more', kg: 2 * 85 });
    expect(ribbons).toHaveLength(17);
    expect(height).toBeLessThan(700);
  });

  it('reads from the lot over the drawing to the table, is tagged, and has the same bytes again', async () => {
    const [paper, again] = [await draw(aTrace(3)), await draw(aTrace(3))];
    const words = ['Trace', 'VE-12', 'Aldermoor Resins', 'is in 3 hulls', 'received lots', 'MIX-1', '6 kg', 'possibly'];
    const table = ['one scale', 'Assumes well-mixed tanks', 'Lots and hulls', 'TS62-2', 'under 0.1 %', 'metered'];
    expect(outOfOrder(paper.text, [...words, ...table])).toBeUndefined();
    const { bookmarks, roles } = await structureOf(paper.bytes);
    expect(bookmarks).toEqual(['Where it went', 'Lots and hulls']);
    expect([...roles]).toEqual(expect.arrayContaining(['Figure', 'Table', 'TH']));
    expect(await readAlternatives(paper.bytes)).toEqual([
      'Drawing of the trace of lot VE-12. Lot VE-12 is in 3 hulls.',
    ]);
    expect(again.bytes.equals(paper.bytes)).toBe(true);
  });

  it('of hulls says so in its title, its picture, its table and what it states', async () => {
    const rows = [{ ...row('VE-12'), what: 'received' }];
    const hulls = { of: 'hulls' as const, code: 'TS62-0, TS62-1', says: 'In TS62-0, TS62-1 there are 4 kg.', rows };
    const { text, bytes } = await draw(aTrace(2, hulls));
    const words = [
      'Trace',
      'Hull',
      'TS62-0, TS62-1',
      'there are 4 kg',
      'Where it came from',
      'in these hulls',
      'In these hulls',
    ];
    expect(outOfOrder(text, [...words, 'VE-12', '2 kg'])).toBeUndefined();
    expect(text).toContain('associatedwiththehull');
    expect(text).not.toContain('thislot');
    expect(await readAlternatives(bytes)).toEqual([
      'Drawing of the trace of hull TS62-0, TS62-1. In TS62-0, TS62-1 there are 4 kg.',
    ]);
    const none = await draw(aTrace(0, { ...hulls, columns: [], links: [], rows: [] }));
    expect(none.text).toContain('Nothingisrecordedasusedinit.');
  });

  it('holds 300 hulls and long names without text over text, and a lot that went nowhere', async () => {
    const long = { title: LONG_NAME, nodes: [{ id: 'a', code: LONG_NAME, kg: 1e9 }] };
    const { columns } = aTrace(300);
    expect(pageFaults(await draw(aTrace(300, { columns: [long, ...columns.slice(1)] })))).toEqual([]);
    const alone = await draw(aTrace(0, { columns: [columns[0] ?? long], links: [], rows: [] }));
    expect(pageFaults(alone)).toEqual([]);
    expect(alone.text).toContain('Nothingwasmadeofit,andnohullholdsit.');
  });
});
