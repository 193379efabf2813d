import { describe, expect, it } from '@jest/globals';
import { onExampleGauge } from '@hull-record/trade';
import { teethAround, teethOf } from '../../../apps/web/src/station/teeth.js';

describe('the teeth of a wet-film gauge', () => {
  it.each(['mil', 'um'] as const)('are all on the example gauge of ASTM D4414, in %s', (unit) => {
    const teeth = teethOf(unit);
    expect(teeth.length).toBeGreaterThan(15);
    expect(teeth.filter(({ last, next }) => !onExampleGauge(last, unit) || !onExampleGauge(next, unit))).toEqual([]);
    expect(teeth.slice(1).every(({ last }, i) => last === teeth[i]?.next)).toBe(true);
  });

  it('stand around the limits, and are moved by whole pages, never past an end', () => {
    const limits = { min: 16, max: 20 };
    const shown = teethAround(limits, 'mil', 10, 0).map(({ last }) => last);
    expect(shown).toEqual([9, 10, 12, 14, 16, 18, 20, 22, 24, 26]);
    expect(teethAround(limits, 'mil', 10, 1)[0]?.last).toBe(28);
    expect(teethAround(limits, 'mil', 10, -9)[0]?.last).toBe(1);
    expect(teethAround(limits, 'mil', 10, 9).at(-1)?.next).toBe(80);
  });
});
