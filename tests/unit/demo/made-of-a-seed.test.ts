import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { randomOf } from '../../../apps/service/src/demo/plan/random.js';
import { instant, later, workingDayOf } from '../../../apps/service/src/demo/plan/working-days.js';

const stream = (text: string): readonly number[] => {
  const random = randomOf(text);
  return Array.from({ length: 50 }, () => random.next());
};

describe('numbers made of a text', () => {
  it('are the same for the same text, others for another, and all between 0 and 1', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (one, other) => {
        expect(stream(one)).toEqual(stream(one));
        expect(stream(one).every((value) => value >= 0 && value < 1)).toBe(true);
        if (one !== other) expect(stream(one)).not.toEqual(stream(other));
      }),
    );
  });

  it('scatter about the mean that is asked for', () => {
    const random = randomOf('scatter');
    const values = Array.from({ length: 4_000 }, () => random.normal(20, 2));
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const deviation = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
    expect(Math.abs(mean - 20)).toBeLessThan(0.15);
    expect(Math.abs(deviation - 2)).toBeLessThan(0.15);
  });

  it('reach both ends of whole numbers', () => {
    const random = randomOf('whole');
    expect(new Set(Array.from({ length: 200 }, () => random.whole(2, 4)))).toEqual(new Set([2, 3, 4]));
  });
});

describe('working days of the demo plant', () => {
  it.each([
    [0, '07:30', '2025-01-06T07:30:00.000Z'],
    [4, '06:05', '2025-01-10T06:05:00.000Z'],
    [5, '00:00', '2025-01-13T00:00:00.000Z'],
    [144, '12:00', '2025-07-25T12:00:00.000Z'],
    [145, '06:00', '2025-08-11T06:00:00.000Z'],
    [239, '06:00', '2025-12-19T06:00:00.000Z'],
    [240, '06:00', '2026-01-05T06:00:00.000Z'],
    [374, '15:30', '2026-07-10T15:30:00.000Z'],
  ])('day %i at %s is %s', (day, time, at) => {
    expect(instant(day, time)).toBe(at);
    expect(workingDayOf(at)).toBe(day);
  });

  it('count a weekend, and a week in which the plant rests, as the Friday before it', () => {
    expect(workingDayOf(later(instant(4, '12:00'), 24 * 60))).toBe(4);
    expect(workingDayOf(later(instant(144, '12:00'), 24 * 60 * 9))).toBe(144);
  });
});
