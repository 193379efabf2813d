import { describe, expect, it } from '@jest/globals';
import { isWithin, windowsOf } from '../../../apps/service/src/records/papers/equipment-recall/windows.js';

const at = (hour: number): Date => new Date(Date.UTC(2026, 0, 5, hour));
const check = (hour: number, good: boolean, what = 'zero') => ({ what, good, happened_at: at(hour) });
/** The hours of a day that fall into a window of these checks. */
const hours = (...checks: readonly ReturnType<typeof check>[]): readonly number[] => {
  const windows = windowsOf(checks);
  return Array.from({ length: 10 }, (_, hour) => hour).filter((hour) => windows.some((one) => isWithin(one, at(hour))));
};

describe('a window of a recall', () => {
  it('opens after the last good check, reaches over the bad one, and ends before the next good one', () => {
    expect(hours(check(2, true), check(5, false), check(8, true))).toEqual([3, 4, 5, 6, 7]);
  });

  it('reaches from the first use on when no check was good before, and lasts while none is good after', () => {
    expect(hours(check(5, false), check(8, true))).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(hours(check(5, true), check(7, false))).toEqual([6, 7, 8, 9]);
  });

  it('is one for bad checks in a row, whatever the order of entry, and none where all were good', () => {
    const windows = windowsOf([check(6, false), check(8, true), check(4, false), check(1, true)]);
    expect(windows.map(({ bad }) => bad.map(({ happened_at }) => happened_at))).toEqual([[at(4), at(6)]]);
    expect(windowsOf([check(1, true), check(2, true)])).toEqual([]);
  });

  it('is of one kind of check: a good one of another kind neither opens nor closes it', () => {
    expect(hours(check(2, true), check(3, true, 'span'), check(5, false), check(6, true, 'span'))).toEqual([
      3, 4, 5, 6, 7, 8, 9,
    ]);
  });
});
