import { describe, expect, it } from '@jest/globals';
import { checkRepair, damageDepth, type PlannedRepair } from '@hull-record/trade';
import fc from 'fast-check';

const repair: PlannedRepair = { originalMm: 10, damageDepthMm: 8, taperMm: 96, patchMm: 8 };

describe('how deep damage goes', () => {
  it.each([
    [7.9, 'partially-through'],
    [8, 'through-thickness'],
    [9, 'through-thickness'],
  ] as const)('%d mm in a laminate of 8 mm is %s', (depth, words) => {
    expect(damageDepth(depth, 8)).toBe(words);
  });
});

describe('a repair against what is asked of it', () => {
  it('with its taper at 12:1 and a patch as thick as what it replaces nothing is found', () => {
    expect(checkRepair(repair)).toEqual([]);
  });

  it('damage right through the laminate is no deeper than it', () => {
    expect(checkRepair({ ...repair, originalMm: 8 })).toEqual([]);
  });

  it.each([
    [95, 12, ['11.88:1 where 12:1 is asked.']],
    [96, 20, ['12.00:1 where 20:1 is asked.']],
    [160, 20, []],
    [64, 8, []],
    [0, 12, ['0.00:1 where 12:1 is asked.']],
  ] as const)('a taper of %d mm over 8 mm where %d:1 is asked', (taperMm, least, details) => {
    const found = details.map((detail) => ({ rule: 'taper too short', detail }));
    expect(checkRepair({ ...repair, taperMm }, least)).toEqual(found);
  });

  it('tapered from both sides half the length is enough, each side being half as deep', () => {
    expect(checkRepair({ ...repair, taperMm: 48, sides: 'both' })).toEqual([]);
    expect(checkRepair({ ...repair, taperMm: 47, sides: 'both' })).toEqual([
      { rule: 'taper too short', detail: '11.75:1 where 12:1 is asked.' },
    ]);
    expect(checkRepair({ ...repair, taperMm: 48, sides: 'one' })).toEqual([
      { rule: 'taper too short', detail: '6.00:1 where 12:1 is asked.' },
    ]);
  });

  it.each([
    [7.1, ['A patch of 7.1 mm replaces 8 mm.']],
    [7.3, []],
    [8.7, []],
    [8.9, ['A patch of 8.9 mm replaces 8 mm.']],
  ] as const)('a patch of %d mm for 8 mm: a tenth more or less is borne', (patchMm, details) => {
    const found = details.map((detail) => ({ rule: 'thickness differs', detail }));
    expect(checkRepair({ ...repair, patchMm })).toEqual(found);
  });

  it('both at once are two findings', () => {
    expect(checkRepair({ ...repair, taperMm: 48, patchMm: 4 })).toEqual([
      { rule: 'taper too short', detail: '6.00:1 where 12:1 is asked.' },
      { rule: 'thickness differs', detail: 'A patch of 4 mm replaces 8 mm.' },
    ]);
  });

  it('damage deeper than the laminate is the only finding', () => {
    expect(checkRepair({ ...repair, damageDepthMm: 11, taperMm: 1 })).toEqual([
      { rule: 'deeper than the laminate', detail: '11 mm deep in 10 mm.' },
    ]);
  });

  it.each([
    [{ originalMm: 0 }],
    [{ originalMm: Infinity }],
    [{ damageDepthMm: 0 }],
    [{ damageDepthMm: -1 }],
    [{ patchMm: 0 }],
    [{ patchMm: NaN }],
    [{ taperMm: -1 }],
    [{ taperMm: NaN }],
    [{ taperMm: Infinity }],
  ])('with %j it cannot be judged', (wrong) => {
    expect(checkRepair({ ...repair, ...wrong })).toEqual([
      { rule: 'cannot be judged', detail: 'Thickness, depth, taper and patch must be numbers above zero.' },
    ]);
  });

  it.each([0, -12, NaN, Infinity])('against a ratio of %d it cannot be judged', (least) => {
    expect(checkRepair(repair, least).map(({ rule }) => rule)).toEqual(['cannot be judged']);
  });

  it('a longer taper is never found too short where a shorter one was not', () => {
    const taper = fc.double({ min: 0, max: 300, noNaN: true });
    fc.assert(
      fc.property(taper, taper, (a, b) => {
        const [short, long] = [Math.min(a, b), Math.max(a, b)].map((taperMm) => checkRepair({ ...repair, taperMm }));
        expect(long?.length).toBeLessThanOrEqual(short?.length ?? 0);
      }),
    );
  });
});
