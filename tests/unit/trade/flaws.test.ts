import { describe, expect, it } from '@jest/globals';
import {
  DEFECT_KINDS,
  FLAW_ACCEPTANCE,
  FLAW_CAUSES_SOURCE,
  isSurfaceDamage,
  judgeFlaw,
  likelyCauses,
  type DefectKind,
  type FlawRow,
} from '@hull-record/trade';
import fc from 'fast-check';

const MEMORY = 'ASTM D2563-08 (withdrawn 2024), from memory, confirm against the standard';
const SHEET = 'ASTM D2563-08 (withdrawn 2024), as restated on an allowable-defects sheet and from memory';

const rowOf = (kind: DefectKind): FlawRow | undefined => FLAW_ACCEPTANCE.find((row) => row.kind === kind);

describe('the default acceptance table', () => {
  it('has its kinds in the order of the standard, and none for porosity, which has no size', () => {
    expect(FLAW_ACCEPTANCE.map(({ kind }) => kind).join(' ')).toBe(
      'chip crack surface-crack crazing edge-delamination internal-delamination dry-spot foreign-inclusion fracture ' +
        'air-bubble blister burned fish-eye lack-of-fillout orange-peel pimple pit pre-gel resin-pocket ' +
        'resin-rich-edge shrink-mark wash wormhole wrinkles scratch short',
    );
  });

  it.each([
    ['chip', 3, 0.125, 6.5, 0.25, MEMORY],
    ['surface-crack', 3, 0.125, 6.5, 0.25, MEMORY],
    ['crazing', 13, 0.5, 25, 1, SHEET],
    ['edge-delamination', 3, 0.125, 6.5, 0.25, MEMORY],
    ['dry-spot', 14, 0.5625, 19, 0.75, MEMORY],
    ['fracture', 21, 0.8125, 29, 1.125, MEMORY],
    ['fish-eye', 9.5, 0.375, 13, 0.5, MEMORY],
    ['lack-of-fillout', 6.5, 0.25, 9.5, 0.375, MEMORY],
    ['orange-peel', 14, 0.5625, 29, 1.125, MEMORY],
    ['pre-gel', 6.5, 0.25, 13, 0.5, MEMORY],
    ['resin-pocket', 3, 0.125, 6.5, 0.25, MEMORY],
    ['resin-rich-edge', 0.4, 0.015625, 0.8, 0.03125, MEMORY],
    ['wash', 21, 0.8125, 29, 1.125, MEMORY],
    ['wormhole', 3, 0.125, 6.5, 0.25, MEMORY],
  ] as const)(
    '%s is limited by size alone: %d mm (%d in) at II, %d mm (%d in) at III',
    (kind, mm2, in2, mm3, in3, source) => {
      expect(rowOf(kind)).toEqual({ kind, II: { mm: mm2, inches: in2 }, III: { mm: mm3, inches: in3 }, source });
    },
  );

  it.each(['crack', 'internal-delamination', 'burned', 'short'] as const)('no %s is permitted at any level', (kind) => {
    expect(rowOf(kind)).toEqual({ kind, II: null, III: null, source: MEMORY });
  });

  it('a pimple is permitted at level III only', () => {
    expect(rowOf('pimple')).toEqual({ kind: 'pimple', II: null, III: { mm: 3, inches: 0.125 }, source: MEMORY });
  });

  it('inclusions are limited to one in a square foot', () => {
    const count = { atMost: 1, areaMm2: 92903.04 };
    expect(rowOf('foreign-inclusion')).toEqual({
      kind: 'foreign-inclusion',
      II: { mm: 0.8, inches: 0.03125, count },
      III: { mm: 1.5, inches: 0.0625, count },
      source: MEMORY,
    });
  });

  it('air bubbles are limited to two or four in a square inch', () => {
    expect(rowOf('air-bubble')).toEqual({
      kind: 'air-bubble',
      II: { mm: 1.5, inches: 0.0625, count: { atMost: 2, areaMm2: 645.16 } },
      III: { mm: 3, inches: 0.125, count: { atMost: 4, areaMm2: 645.16 } },
      source: SHEET,
    });
  });

  it.each([
    ['blister', 3, 0.125, 6.5, 0.25, 'height within drawing tolerance', 'height within drawing tolerance', SHEET],
    ['pit', 0.4, 0.015625, 0.8, 0.03125, 'under 10 % of the wall', 'under 20 % of the wall', SHEET],
    ['shrink-mark', 9.5, 0.375, 14, 0.5625, 'at most 25 % of the wall', 'at most 25 % of the wall', MEMORY],
    ['wrinkles', 13, 0.5, 25, 1, 'under 10 % of the wall', 'under 15 % of the wall', MEMORY],
    ['scratch', 25, 1, 25, 1, '0.125 mm (0.005 in)', '0.255 mm (0.010 in)', MEMORY],
  ] as const)(
    '%s is limited by size and depth: %d mm (%d in), %d mm (%d in)',
    (kind, mm2, in2, mm3, in3, depth2, depth3, source) => {
      expect(rowOf(kind)).toEqual({
        kind,
        II: { mm: mm2, inches: in2, depth: depth2 },
        III: { mm: mm3, inches: in3, depth: depth3 },
        source,
      });
    },
  );
});

describe('the verdict on a flaw', () => {
  const within = 'Within the limits of the level.';

  it.each([
    [3, 'mm', 'II', 'accepted', within, 3],
    [3.1, 'mm', 'II', 'rejected', '3.1 mm is over 3 mm.', 3],
    [3.1, 'mm', 'III', 'accepted', within, 6.5],
    [6.6, 'mm', 'III', 'rejected', '6.6 mm is over 6.5 mm.', 6.5],
    [0.125, 'in', 'II', 'accepted', within, 0.125],
    [0.126, 'in', 'II', 'rejected', '0.126 in is over 0.125 in.', 0.125],
    [0.25, 'in', 'III', 'accepted', within, 0.25],
    [0.001, 'mm', 'I', 'rejected', 'None is permitted at level I.', null],
  ] as const)('a chip of %d %s at level %s is %s: %s', (size, unit, level, verdict, reason, limit) => {
    const judged = { verdict, reason, limit, unit, source: MEMORY };
    expect(judgeFlaw({ kind: 'chip', size, unit }, level)).toEqual(judged);
  });

  it('a kind that a level permits none of is rejected, however small', () => {
    const judged = { verdict: 'rejected', limit: null, unit: 'in', source: MEMORY };
    const pimple = { kind: 'pimple', size: 0.001, unit: 'in' } as const;
    expect(judgeFlaw(pimple, 'II')).toEqual({ ...judged, reason: 'None is permitted at level II.' });
    expect(judgeFlaw({ ...pimple, kind: 'crack' }, 'III')).toEqual({
      ...judged,
      reason: 'None is permitted at level III.',
    });
  });

  it.each(['porosity', 'gouge', 'sag'] as const)('a kind without a row cannot be judged: %s', (kind) => {
    expect(judgeFlaw({ kind, size: 1, unit: 'mm' }, 'I')).toEqual({
      verdict: 'cannot be judged',
      reason: 'The table has no row for this kind.',
      limit: null,
      unit: 'mm',
      source: 'no acceptance limit is on the table',
    });
  });

  it.each([0, -1, NaN, Infinity, -Infinity])('a size of %d cannot be judged, at any level', (size) => {
    const judged = { verdict: 'cannot be judged', limit: null, unit: 'mm', source: SHEET } as const;
    const reason = 'The size is no number above zero.';
    for (const level of ['I', 'II', 'III'] as const)
      expect(judgeFlaw({ kind: 'blister', size, unit: 'mm' }, level)).toEqual({ ...judged, reason });
  });

  it.each([
    ['2 in 1 in2', 2, 645.16, within],
    ['3 in 1 in2', 3, 645.16, '3 in 645.16 mm2 are over 2 in 645.16 mm2.'],
    ['20 in 10 in2', 20, 6451.6, within],
    ['21 in 10 in2', 21, 6451.6, '21 in 6451.6 mm2 are over 2 in 645.16 mm2.'],
    ['2 in half of it, where no more than 2 were found', 2, 322.58, within],
    ['3 in half of it', 3, 322.58, '3 in 322.58 mm2 are over 2 in 645.16 mm2.'],
  ])('bubbles are counted by the area they lie in: %s', (_, found, areaMm2, reason) => {
    const verdict = reason === within ? 'accepted' : 'rejected';
    const bubbles = { kind: 'air-bubble', size: 1.5, unit: 'mm', count: { found, areaMm2 } } as const;
    expect(judgeFlaw(bubbles, 'II')).toEqual({ verdict, reason, limit: 1.5, unit: 'mm', source: SHEET });
  });

  it('as many as the density allows pass, and one more does not', () => {
    const most = { mm: 5, inches: 0.2, count: { atMost: 2, areaMm2: 100 } };
    const table = [{ kind: 'sag', II: most, III: null, source: 'plant rule 7' }] as const;
    const sags = (found: number) => ({ kind: 'sag', size: 1, unit: 'mm', count: { found, areaMm2: 200 } }) as const;
    expect(judgeFlaw(sags(4), 'II', table).verdict).toBe('accepted');
    expect(judgeFlaw(sags(5), 'II', table).reason).toBe('5 in 200 mm2 are over 2 in 100 mm2.');
  });

  it('the size is named before the count', () => {
    const bubbles = { kind: 'air-bubble', size: 1.6, unit: 'mm', count: { found: 9, areaMm2: 645.16 } } as const;
    expect(judgeFlaw(bubbles, 'II').reason).toBe('1.6 mm is over 1.5 mm.');
  });

  it('a count says nothing where the table has none', () => {
    const chips = { kind: 'chip', size: 1, unit: 'mm', count: { found: 500, areaMm2: 1 } } as const;
    expect(judgeFlaw(chips, 'II').verdict).toBe('accepted');
  });

  it('a table of the plant comes in place of the default', () => {
    const table = [{ kind: 'sag', II: { mm: 5, inches: 0.2 }, III: null, source: 'plant rule 7' }] as const;
    const sag = { kind: 'sag', size: 5, unit: 'mm' } as const;
    expect(judgeFlaw(sag, 'II', table)).toEqual({
      verdict: 'accepted',
      reason: within,
      limit: 5,
      unit: 'mm',
      source: 'plant rule 7',
    });
    expect(judgeFlaw({ ...sag, kind: 'chip' }, 'II', table).verdict).toBe('cannot be judged');
  });

  it('a larger flaw never passes where a smaller one fails, and level III is never stricter than level II', () => {
    const kinds = fc.constantFrom(...DEFECT_KINDS.map(({ code }) => code));
    const size = fc.double({ min: 0.01, max: 40, noNaN: true });
    fc.assert(
      fc.property(kinds, size, size, fc.constantFrom('mm' as const, 'in' as const), (kind, one, other, unit) => {
        const rejected = (of: number, level: 'II' | 'III'): boolean =>
          judgeFlaw({ kind, size: of, unit }, level).verdict === 'rejected';
        const [small, large] = [Math.min(one, other), Math.max(one, other)];
        expect(Number(rejected(small, 'II'))).toBeLessThanOrEqual(Number(rejected(large, 'II')));
        expect(Number(rejected(one, 'III'))).toBeLessThanOrEqual(Number(rejected(one, 'II')));
      }),
    );
  });
});

describe('surface damage', () => {
  it.each([
    [1.99, 'mm', true],
    [2, 'mm', false],
    [3, 'mm', false],
    [0.0624, 'in', true],
    [0.0625, 'in', false],
    [0.07, 'in', false],
    [1, 'in', false],
  ] as const)('is under 2 mm or 1/16 in deep: %d %s is %s', (depth, unit, surface) => {
    expect(isSurfaceDamage(depth, unit)).toBe(surface);
  });
});

describe('where to look for the cause of a flaw', () => {
  const delamination = [
    'poor saturation',
    'dirty surface',
    'glass content too high',
    'air-inhibited coat not removed',
  ] as const;

  it.each([
    ['air-bubble', ['air whipped in when mixing', 'dirty surface', 'not rolled out']],
    ['blister', ['cure too rapid', 'moisture in resin, filler or glass']],
    ['crazing', ['resin-rich area', 'impact', 'thermal or wet and dry cycling', 'shrinkage']],
    ['edge-delamination', delamination],
    ['internal-delamination', delamination],
    ['chip', []],
    ['porosity', []],
  ] as const)('the causes of %s are %j', (kind, causes) => {
    expect(likelyCauses(kind)).toEqual(causes);
  });

  it('the list says whose it is', () => {
    expect(FLAW_CAUSES_SOURCE).toBe("resin maker's list of laminate troubles");
  });
});
