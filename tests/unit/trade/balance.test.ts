import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { balanceOf, verdictOf, type BalanceEvent } from '@hull-record/trade';

const kg = fc.integer({ min: 1, max: 100_000 }).map((grams) => grams / 8);
const event: fc.Arbitrary<BalanceEvent> = fc.oneof(
  fc.record({
    kind: fc.constantFrom('used' as const, 'put into' as const, 'lost' as const),
    at: fc.integer({ min: 0, max: 50 }),
    kg,
    basis: fc.constantFrom('weighed' as const, 'apportioned' as const, 'as scheduled' as const),
    what: fc.constant('x'),
  }),
  fc.record({
    kind: fc.constant('counted' as const),
    at: fc.integer({ min: 0, max: 50 }),
    kg,
    what: fc.constant('count'),
  }),
);
const events = fc.array(event, { maxLength: 30 });
const received = { kg: 12_500, basis: 'weighed' } as const;

describe('a balance', () => {
  it('adds up: received = used + put into + lost + left - difference', () => {
    fc.assert(
      fc.property(events, (all) => {
        const b = balanceOf(received, all, 0.1);
        expect(b.usedKg + b.putIntoKg + b.lostKg + b.leftKg - b.differenceKg).toBeCloseTo(b.receivedKg, 6);
        expect(b.lines.at(-1)?.leftKg ?? received.kg).toBe(b.leftKg);
      }),
    );
  });

  it('does not depend on the order in which things were entered', () => {
    fc.assert(
      fc.property(events, (all) => {
        const apart = all.filter(
          (each, i) =>
            each.kind !== 'counted' || all.findIndex((other) => other.kind === 'counted' && other.at === each.at) === i,
        );
        const [one, other] = [balanceOf(received, apart, 0.1), balanceOf(received, [...apart].reverse(), 0.1)];
        expect(other.leftKg).toBeCloseTo(one.leftKg, 6);
        expect(other.differenceKg).toBeCloseTo(one.differenceKg, 6);
        expect([other.basis, other.verdict]).toEqual([one.basis, one.verdict]);
      }),
    );
  });

  it('after a count has what was counted, less what was drawn since', () => {
    const all: BalanceEvent[] = [
      { kind: 'counted', at: 2, kg: 40, what: 'count' },
      { kind: 'used', at: 2, kg: 10, basis: 'weighed', what: 'L2' },
      { kind: 'used', at: 3, kg: 5, basis: 'as scheduled', what: 'L3' },
    ];
    expect(balanceOf({ kg: 55, basis: 'metered' }, all, null)).toMatchObject({
      differenceKg: -5,
      leftKg: 35,
      basis: 'as scheduled',
    });
  });

  it.each([
    [100, -0.1, 0, 0.1, 'overdrawn: count it'],
    [100, 10, -10, 0.1, 'balances'],
    [100, 10, -10.1, 0.1, 'lost more than allowed'],
    [100, 10, 10.1, 0.1, 'more than was received'],
    [100, 10, -50, null, 'balances'],
  ] as const)('of %d kg with %d left, %d off and an allowance of %p: %s', (of, left, off, allowance, verdict) => {
    expect(verdictOf(of, left, off, allowance)).toBe(verdict);
  });
});
