import { describe, expect, it } from '@jest/globals';
import { compareD714, D714_GRADES, formatD714, parseD714 } from '@hull-record/trade';
import fc from 'fast-check';

const grade = fc.constantFrom(...D714_GRADES);

describe('blister grades', () => {
  it('read back as they were written', () => {
    fc.assert(fc.property(grade, (g) => expect(parseD714(formatD714(g))).toEqual(g)));
  });

  it('are in one order: equal only to themselves, opposite when swapped, and never in a circle', () => {
    fc.assert(
      fc.property(grade, grade, grade, (a, b, c) => {
        expect(compareD714(a, b) === 0).toBe(formatD714(a) === formatD714(b));
        expect(Math.sign(compareD714(a, b)) + Math.sign(compareD714(b, a))).toBe(0);
        if (compareD714(a, b) < 0 && compareD714(b, c) < 0) expect(compareD714(a, c)).toBeLessThan(0);
      }),
    );
  });

  it('put size before frequency: dense small blisters are milder than few large ones, by our convention', () => {
    expect(compareD714({ size: 8, frequency: 'D' }, { size: 2, frequency: 'F' })).toBeLessThan(0);
  });
});
