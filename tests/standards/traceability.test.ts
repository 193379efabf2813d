import { describe, expect, it } from '@jest/globals';
import { lotsUpstream, membersDownstream, type Input } from '@hull-record/genealogy';
import { isExpired } from '@hull-record/trade';
import { publishedCases } from '../support/published-cases.js';

publishedCases('traceability');

const RULE = 'LR Rules for Materials, July 2022, Ch 14 Sec 5, 5.3.4: no batch later than expiry';

describe(`a lot that expires on 2026-05-31 (${RULE})`, () => {
  it.each([
    ['2026-05-30', false],
    ['2026-05-31', false],
    ['2026-06-01', true],
    ['2027-01-01', true],
    ['2025-12-31', false],
  ])('used on %s it is expired: %s', (on, expired) => {
    expect(isExpired('2026-05-31', on)).toBe(expired);
  });
});

const HULLS = ['H1', 'H2', 'H3'];
const used = (lot: string, input: string): Input => ({ lot, input, kg: 1 });
const hullsOf = (lot: string, inputs: readonly Input[]): readonly string[] =>
  HULLS.filter((hull) => membersDownstream(lot, inputs).has(hull));

describe('tracing both ways (LR Rules for Materials 5.3.8: each section traceable to its batches; ISO 9000:2015 3.6.13)', () => {
  // G1 in H1 and H2, R1 in H1 and H3, and R1 in a repair of H2.
  const inputs = [
    used('H1', 'G1'),
    used('H2', 'G1'),
    used('H1', 'R1'),
    used('H3', 'R1'),
    used('repair', 'R1'),
    used('H2', 'repair'),
  ];

  it('lots in a hull and hulls of a lot, and the hulls that share one (derived)', () => {
    expect(hullsOf('R1', inputs)).toEqual(['H1', 'H2', 'H3']);
    const lots = (hull: string): readonly string[] => ['G1', 'R1'].filter((lot) => lotsUpstream(hull, inputs).has(lot));
    expect(lots('H2')).toEqual(['G1', 'R1']);
    expect(HULLS.filter((hull) => hull !== 'H1' && lots(hull).some((lot) => lots('H1').includes(lot)))).toEqual([
      'H2',
      'H3',
    ]);
  });

  it('a drum that was topped up from two lots leads from both to every hull fed after (derived)', () => {
    const fed = [used('D1', 'R1'), used('D1-2', 'D1'), used('D1-2', 'R2'), used('H1', 'D1'), used('H2', 'D1-2')];
    expect(hullsOf('R1', fed)).toEqual(['H1', 'H2']);
    expect(hullsOf('R2', fed)).toEqual(['H2']);
  });
});
