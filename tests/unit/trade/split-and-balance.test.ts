import { describe, expect, it } from '@jest/globals';
import {
  balanceOf,
  splitAmount,
  splitByCatalyst,
  SplitImpossible,
  verdictOf,
  type BalanceEvent,
} from '@hull-record/trade';
import fc from 'fast-check';

describe('how the parts of an amount are written', () => {
  it.each([
    ['0.5', [1, 1], ['0.25', '0.25']],
    ['0.005', [2, 1], ['0.003', '0.002']],
    ['0.002', [1, 1], ['0.001', '0.001']],
    ['200', [1, 1], ['100', '100']],
    ['1.00000', [1], ['1']],
    ['0.00004', [3, 1], ['0.00003', '0.00001']],
  ] as const)('%s over %j is %j: no needless zeros, no needless point', (amount, weights, parts) => {
    expect(splitAmount(amount, weights)).toEqual(parts);
  });

  it('what rounding down leaves goes to the largest remainder, not to the largest part', () => {
    // Due in thousandths: 71.43, 14.29, 14.29; then 57.14, 14.29, 28.57; then 10, 2.5, 2.5.
    expect(splitAmount('0.1', [5, 1, 1])).toEqual(['0.072', '0.014', '0.014']);
    expect(splitAmount('0.1', [4, 1, 2])).toEqual(['0.057', '0.014', '0.029']);
    expect(splitAmount('0.015', [4, 1, 1])).toEqual(['0.01', '0.003', '0.002']);
  });

  it('equal weights differ by one last place at most, the larger parts first', () => {
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 1_000_000 }), fc.integer({ min: 1, max: 40 }), (grams, n) => {
        const parts = splitAmount(String(grams / 1000), Array<number>(n).fill(7));
        const thousandths = parts.map((part) => Math.round(Number(part) * 1000));
        expect([...thousandths].sort((a, b) => b - a)).toEqual(thousandths);
        expect((thousandths[0] ?? 0) - (thousandths.at(-1) ?? 0)).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('an amount that cannot be split', () => {
  it.each([
    ['1', [], 'Name at least one part to split over.'],
    ['1', [0, 1], 'Each weight must be more than zero.'],
    ['1', [-1, 2], 'Each weight must be more than zero.'],
    ['1', [1, NaN], 'Each weight must be more than zero.'],
    ['1', [Infinity, 1], 'Each weight must be more than zero.'],
    ['1', [1, 1e9], 'A part would be less than the last place of the amount: leave it out.'],
    ['9', [1e308, 1e-300], 'A part would be less than the last place of the amount: leave it out.'],
    ['0.001', [1, 1], 'A part would be less than the last place of the amount: leave it out.'],
  ])('%s over %j is refused with the reason', (quantity, weights, message) => {
    expect(() => splitAmount(quantity, weights)).toThrow(SplitImpossible);
    expect(() => splitAmount(quantity, weights)).toThrow(
      expect.objectContaining({ code: 'split-impossible', message, data: { quantity, weights } }),
    );
  });

  it.each([
    ['10', 0, 'Catalyst is more than 0 and less than 100 per cent of the resin.'],
    ['10', -1, 'Catalyst is more than 0 and less than 100 per cent of the resin.'],
    ['10', 100, 'Catalyst is more than 0 and less than 100 per cent of the resin.'],
    ['10', NaN, 'Catalyst is more than 0 and less than 100 per cent of the resin.'],
    ['0.000001', 2, 'The mass is too small to be split into resin and catalyst.'],
    ['0', 2, 'The mass is too small to be split into resin and catalyst.'],
  ])('%s kg at %d %% is refused with the reason', (quantity, percent, message) => {
    expect(() => splitByCatalyst(quantity, percent)).toThrow(
      expect.objectContaining({ code: 'split-impossible', message, data: { quantity, percent } }),
    );
  });

  it('a millionth of resin and a millionth of catalyst is the least', () => {
    expect(splitByCatalyst('0.000002', 99)).toEqual({ resin: '0.000001', catalyst: '0.000001' });
  });
});

describe('the lines of a balance', () => {
  const received = { kg: 100, basis: 'weighed' } as const;

  it('say in order of time what each thing changed and what it left', () => {
    const events: BalanceEvent[] = [
      { kind: 'used', at: 3, kg: 10, basis: 'as scheduled', what: 'L1' },
      { kind: 'counted', at: 2, kg: 85, what: 'count' },
      { kind: 'put into', at: 1, kg: 5, basis: 'metered', what: 'tank' },
      { kind: 'lost', at: 2, kg: 4, basis: 'weighed', what: 'spilt' },
    ];
    expect(balanceOf(received, events, 0.05)).toEqual({
      receivedKg: 100,
      usedKg: 10,
      putIntoKg: 5,
      lostKg: 4,
      differenceKg: -6,
      leftKg: 75,
      basis: 'as scheduled',
      lines: [
        { kind: 'put into', at: 1, what: 'tank', changeKg: -5, leftKg: 95, basis: 'metered' },
        { kind: 'lost', at: 2, what: 'spilt', changeKg: -4, leftKg: 91, basis: 'weighed' },
        { kind: 'counted', at: 2, what: 'count', changeKg: -6, leftKg: 85, basis: null },
        { kind: 'used', at: 3, what: 'L1', changeKg: -10, leftKg: 75, basis: 'as scheduled' },
      ],
      verdict: 'lost more than allowed',
    });
  });

  it('a lot of which nothing was drawn is known as it was received', () => {
    expect(balanceOf(received, [], 0.05)).toMatchObject({ leftKg: 100, basis: 'weighed', lines: [] });
    const counted = balanceOf(received, [{ kind: 'counted', at: 1, kg: 99, what: 'count' }], 0.05);
    expect(counted).toMatchObject({ leftKg: 99, basis: 'weighed', verdict: 'balances' });
  });

  it('what was drawn or counted at one instant stays in the order it was entered', () => {
    const draw = (what: string): BalanceEvent => ({ kind: 'used', at: 1, kg: 1, basis: 'weighed', what });
    const count = (kg: number, what: string): BalanceEvent => ({ kind: 'counted', at: 1, kg, what });
    const { lines } = balanceOf(received, [draw('a'), count(90, 'c'), draw('b'), count(91, 'd')], null);
    expect(lines.map(({ what, leftKg }) => [what, leftKg])).toEqual([
      ['a', 99],
      ['b', 98],
      ['c', 90],
      ['d', 91],
    ]);
  });
});

describe('the verdict of a balance', () => {
  it.each([
    [100, 0, 0, null, 'balances'],
    [100, -1e-7, 0, null, 'balances'],
    [100, -1e-5, 0, null, 'overdrawn: count it'],
    [100, 10, 10, 0.1, 'balances'],
    [100, 10, 10 + 1e-7, 0.1, 'balances'],
    [100, 10, 10 + 1e-5, 0.1, 'more than was received'],
    [100, 10, -10 - 1e-7, 0.1, 'balances'],
    [100, 10, -10 - 1e-5, 0.1, 'lost more than allowed'],
    [100, 10, 0.5, 0, 'more than was received'],
  ] as const)('of %d kg, %d left, %d off, allowance %p: %s', (of, left, off, allowance, verdict) => {
    expect(verdictOf(of, left, off, allowance)).toBe(verdict);
  });
});
