import { describe, expect, it } from '@jest/globals';
import { membersDownstream } from '@hull-record/genealogy';
import { isSurfaceDamage, LEAST_TAPER_RATIO } from '@hull-record/trade';
import { publishedCases } from '../support/published-cases.js';

publishedCases('repair');

describe('damage', () => {
  it('surface damage is under 2 mm or 1/16 in (E. Greene, Marine Composites, ch. 5)', () => {
    expect([1.99, 2].map((mm) => isSurfaceDamage(mm, 'mm'))).toEqual([true, false]);
    expect([0.062, 0.0625].map((inch) => isSurfaceDamage(inch, 'in'))).toEqual([true, false]);
  });

  it('the least taper is the best of the tests: 12 of 6, 12 and 20 (Rothbarth & Pinto 2019)', () => {
    expect(LEAST_TAPER_RATIO).toBe(12);
  });

  it('a lot is found through the repair it went into (derived: a repair uses its own lots)', () => {
    const used = [
      { lot: 'hull H2', input: 'G1', kg: 10 },
      { lot: 'repair of H2', input: 'R1', kg: 0.4 },
      { lot: 'hull H2', input: 'repair of H2', kg: 0.4 },
    ];
    expect(membersDownstream('R1', used)).toContain('hull H2');
  });
});
