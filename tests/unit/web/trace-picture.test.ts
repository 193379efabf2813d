import { describe, expect, it } from '@jest/globals';
import type { TraceNode } from '@hull-record/contracts';
import { toCsv } from '../../../apps/web/src/record/csv.js';
import { columnsOf } from '../../../apps/web/src/traces/columns.js';
import { layOut } from '../../../apps/web/src/traces/layout.js';
import { nodeAt, nodeBeside, pickOf } from '../../../apps/web/src/traces/pick.js';

const node = (
  id: string,
  kind: TraceNode['kind'],
  origin: string | null,
  kg: number,
  at: string | null = null,
): TraceNode => ({
  ...{ id, code: id, kind, origin, kg, at, material: null, role: null, supplier: null, supplierLot: null, state: null },
  ...{ share: null, basis: null, possibly: false, possiblyAnyOf: null, hin: null, now: null },
});

/** A lot in two tank fills, a mix of a mix, and two hulls; another lot in one of the hulls alone. */
const GRAPH = {
  nodes: [
    node('A', 'lot', 'received', 100),
    node('B', 'lot', 'received', 10),
    node('T2', 'lot', 'tank', 20, '2026-02-01'),
    node('T1', 'lot', 'tank', 100, '2026-01-01'),
    node('M1', 'lot', 'mixed', 30),
    node('M2', 'lot', 'mixed', 30),
    node('H1', 'hull', null, 40),
    node('H2', 'hull', null, 20),
  ],
  links: [
    { from: 'A', to: 'T1', kg: 100 },
    { from: 'T1', to: 'T2', kg: 20 },
    { from: 'T1', to: 'M1', kg: 30 },
    { from: 'M1', to: 'M2', kg: 30 },
    { from: 'M2', to: 'H1', kg: 30 },
    { from: 'B', to: 'H1', kg: 10 },
    { from: 'T2', to: 'H2', kg: 20 },
  ],
};

describe('the picture of a trace', () => {
  it('has received lots left, tanks in the order of their fills, mixtures by how deep they are, hulls right', () => {
    expect(columnsOf(GRAPH).map(({ kind, nodes }) => [kind, nodes.map(({ id }) => id)])).toEqual([
      ['received', ['A', 'B']],
      ['tank', ['T1', 'T2']],
      ['made', ['M1']],
      ['made', ['M2']],
      ['hulls', ['H1', 'H2']],
    ]);
  });

  it('draws bars as high as their kilograms on one scale, none over another', () => {
    const { boxes, ribbons, height } = layOut(GRAPH);
    const [a, t1] = [boxes.get('A'), boxes.get('T1')];
    expect((a?.bar ?? 0) / (boxes.get('H1')?.bar ?? 1)).toBeCloseTo(2.5);
    expect(a?.bar).toBe(t1?.bar);
    const all = [...boxes.values()];
    for (const box of all)
      for (const other of all)
        if (box !== other && box.column === other.column)
          expect(box.y + box.row <= other.y || other.y + other.row <= box.y).toBe(true);
    expect(height).toBeGreaterThanOrEqual(Math.max(...all.map(({ y, row }) => y + row)));
    expect(ribbons).toHaveLength(GRAPH.links.length);
    expect(ribbons.every(({ d }) => /^M [-\d. CVZ]+$/.test(d) && !d.includes('NaN'))).toBe(true);
  });

  it('of nothing, and of what only possibly went there, is a picture too', () => {
    expect(layOut({ nodes: [node('A', 'lot', 'received', 1)], links: [] }).ribbons).toEqual([]);
    const alone = layOut({ nodes: [{ ...node('H', 'hull', null, 0), kg: null, possibly: true }], links: [] });
    expect([...alone.boxes.values()].every(({ y, bar }) => Number.isFinite(y + bar))).toBe(true);
  });
});

describe('what is picked', () => {
  it('keeps all before it and all after it, not what else those do', () => {
    const pick = pickOf('M1', GRAPH.links);
    expect(GRAPH.nodes.filter(({ id }) => pick.has(id)).map(({ id }) => id)).toEqual(['A', 'T1', 'M1', 'M2', 'H1']);
    expect([pick.hasWay('T1', 'M1'), pick.hasWay('T1', 'T2'), pick.hasWay('B', 'H1')]).toEqual([true, false, false]);
  });

  it('is found under a pointer and beside another by keys', () => {
    const picture = layOut(GRAPH);
    const box = picture.boxes.get('T2');
    expect(nodeAt(picture, (box?.x ?? 0) + 3, (box?.y ?? 0) + 1)).toBe('T2');
    expect(nodeAt(picture, 0, 0)).toBeUndefined();
    expect(['ArrowDown', 'ArrowLeft', 'ArrowRight'].map((key) => nodeBeside(picture, 'T1', key))).toEqual([
      'T2',
      'A',
      'M1',
    ]);
    expect(['A', 'B']).toContain(nodeBeside(picture, undefined, 'ArrowDown'));
  });
});

describe('a file of values', () => {
  it.each([
    ['=1+1', "'=1+1"],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@a', "'@a"],
    ['\tx', "'\tx"],
    ['a=1', 'a=1'],
    ['a "b", c', '"a ""b"", c"'],
    ['=a\nb', '"\'=a\nb"'],
  ])('writes %j as %j', (text, cell) => {
    expect(toCsv([[text]])).toBe(`${cell}\r\n`);
  });

  it('leaves numbers numbers, and nothing empty', () => {
    expect(toCsv([[-1.5, null, 'x'], []])).toBe('-1.5,,x\r\n\r\n');
  });
});
