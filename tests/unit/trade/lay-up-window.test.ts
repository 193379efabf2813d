import { describe, expect, it } from '@jest/globals';
import { bondOf, layUpTimes, NumberInvalid, windowCountdown } from '@hull-record/trade';
import fc from 'fast-check';

/** Ten minutes after the layer ended until twenty minutes after it. */
const times = { earliest: 600_000, latest: 1_200_000 };

describe('when the next layer may go on', () => {
  it('is counted in minutes from the end of the layer before', () => {
    const window = { earliestMinutes: 45, latestMinutes: 1440 };
    expect(layUpTimes(1_000_000, window)).toEqual({ earliest: 3_700_000, latest: 87_400_000 });
  });

  it('may be at once, and may be one instant', () => {
    expect(layUpTimes(0, { earliestMinutes: 0, latestMinutes: 1 })).toEqual({ earliest: 0, latest: 60_000 });
    expect(layUpTimes(0, { earliestMinutes: 30, latestMinutes: 30 })).toEqual({
      earliest: 1_800_000,
      latest: 1_800_000,
    });
  });

  it.each([
    [{ earliestMinutes: -1, latestMinutes: 10 }, 'earliest minutes is -1; it must be zero or more.'],
    [{ earliestMinutes: NaN, latestMinutes: 10 }, 'earliest minutes is NaN; it must be a finite number.'],
    [{ earliestMinutes: 0, latestMinutes: 0 }, 'latest minutes is 0; it must be more than zero.'],
    [{ earliestMinutes: 30, latestMinutes: 20 }, 'latest minutes is 20; it must be no less than the earliest.'],
  ])('%j is no window', (window, message) => {
    expect(() => layUpTimes(0, window)).toThrow(NumberInvalid);
    expect(() => layUpTimes(0, window)).toThrow(expect.objectContaining({ message }));
  });
});

describe('how the next layer bonds', () => {
  it.each([
    [599_999, 'too early'],
    [600_000, 'primary'],
    [900_000, 'primary'],
    [1_200_000, 'primary'],
    [1_200_001, 'secondary'],
  ] as const)('begun at %d ms it is %s', (begunAt, bond) => {
    expect(bondOf(begunAt, times)).toBe(bond);
  });
});

describe('the countdown of a window', () => {
  it.each([
    [0, 'wait', 10],
    [480_000, 'wait', 2],
    [540_000, 'wait', 1],
    [600_000, 'open', 10],
    [1_140_000, 'open', 1],
    [1_200_000, 'open', 0],
    [1_200_001, 'passed', null],
    [9_000_000, 'passed', null],
  ] as const)('at %d ms: %s, %p minutes', (now, state, minutes) => {
    expect(windowCountdown(now, times)).toEqual({ state, minutes });
  });

  it('says of every instant what a layer begun then would be', () => {
    const minutes = fc.integer({ min: 1, max: 3000 });
    const words = { wait: 'too early', open: 'primary', passed: 'secondary' } as const;
    fc.assert(
      fc.property(minutes, minutes, fc.integer({ min: 0, max: 200_000_000 }), (a, b, now) => {
        const window = { earliestMinutes: Math.min(a, b), latestMinutes: Math.max(a, b) };
        const at = layUpTimes(0, window);
        expect(bondOf(now, at)).toBe(words[windowCountdown(now, at).state]);
      }),
    );
  });

  it('never counts up while the state stays the same', () => {
    const instant = fc.integer({ min: 0, max: 1_200_000 });
    fc.assert(
      fc.property(instant, instant, (a, b) => {
        const [before, after] = [windowCountdown(Math.min(a, b), times), windowCountdown(Math.max(a, b), times)];
        if (before.state === after.state) expect(after.minutes).toBeLessThanOrEqual(before.minutes ?? 0);
      }),
    );
  });
});
