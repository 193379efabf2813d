import { describe, expect, it } from '@jest/globals';
import { evenScale, ratioScale } from '../../../apps/web/src/cases/answer/scale.js';
import { bandOf, stepsOf } from '../../../apps/web/src/cases/answer/steps.js';

const at = ({ days, value }: { days: number; value: number }) => ({ x: days, y: value });

describe('a scale of ratios', () => {
  it('has twice as many as far from 1 as half as many, and shows 1 whatever is drawn', () => {
    const { at: x, ticks } = ratioScale([0.5, 2], 0, 100);
    expect(x(1) - x(0.5)).toBeCloseTo(x(2) - x(1), 9);
    expect(ticks).toContain(1);
    expect(ratioScale([20, 30], 0, 100).ticks).toContain(1);
  });

  it('puts what is none, or beyond its end, at the end', () => {
    const { at: x } = ratioScale([1, 2], 10, 90);
    expect([x(0), x(1e9)]).toEqual([10, 90]);
  });
});

describe('an even scale', () => {
  it.each([
    [9.4, [0, 2.5, 5, 7.5, 10]],
    [1, [0, 0.25, 0.5, 0.75, 1]],
    [400, [0, 100, 200, 300, 400]],
  ])('up to %d has the ticks %j', (most, ticks) => {
    expect(evenScale(most, 0, 1).ticks).toEqual(ticks);
  });

  it('has 0 at its beginning and its last tick at its end', () => {
    const { at: y, ticks } = evenScale(9.4, 250, 50);
    expect([y(0), y(ticks.at(-1) ?? 0)]).toEqual([250, 50]);
  });
});

describe('a line of steps', () => {
  it('holds each value until the next age', () => {
    const steps = [
      { days: 0, value: 1 },
      { days: 10, value: 0.5 },
    ];
    expect(stepsOf(steps, at)).toBe('M0 1H10V0.5');
  });

  it('has a ground between its limits that goes out along the upper and back along the lower', () => {
    const limits = [
      { days: 0, lower: 8, upper: 9 },
      { days: 10, lower: 4, upper: 6 },
    ];
    expect(bandOf(limits, at)).toBe('M0 9H10V6V4H10V8V8H0Z');
  });
});
