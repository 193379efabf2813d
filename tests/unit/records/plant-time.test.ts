import { describe, expect, it } from '@jest/globals';
import { plantTime } from '../../../apps/service/src/platform/papers/plant-time.js';

describe('An instant in the words of the plant', () => {
  it.each([
    ['America/New_York', '2026-01-05T12:12:00Z', '5 Jan 2026 07:12 UTC−5'],
    ['America/New_York', '2026-07-05T12:12:00Z', '5 Jul 2026 08:12 UTC−4'],
    ['America/New_York', '2026-01-01T04:59:59.999Z', '31 Dec 2025 23:59 UTC−5'],
    ['Europe/Oslo', '2026-09-30T22:00:00Z', '1 Oct 2026 00:00 UTC+2'],
    ['Asia/Kolkata', '2026-01-05T12:12:00Z', '5 Jan 2026 17:42 UTC+5:30'],
    ['America/St_Johns', '2026-01-05T12:12:00Z', '5 Jan 2026 08:42 UTC−3:30'],
    ['UTC', '2026-01-05T00:00:00Z', '5 Jan 2026 00:00 UTC'],
  ])('in %s, %s is %s', (zone, instant, words) => {
    expect(plantTime(zone).at(new Date(instant))).toBe(words);
  });

  it.each([
    ['2026-01-05T12:00:00Z', '2026-01-05T15:30:00Z', '5 Jan 2026 07:00 to 10:30 UTC−5'],
    ['2026-01-05T12:00:00Z', '2026-01-05T12:00:00Z', '5 Jan 2026 07:00 UTC−5'],
    ['2026-01-05T23:00:00Z', '2026-01-06T06:00:00Z', '5 Jan 2026 18:00 UTC−5 to 6 Jan 2026 01:00 UTC−5'],
    ['2026-03-08T06:30:00Z', '2026-03-08T07:30:00Z', '8 Mar 2026 01:30 UTC−5 to 8 Mar 2026 03:30 UTC−4'],
  ])('from %s to %s it is %s', (from, to, words) => {
    expect(plantTime('America/New_York').span(new Date(from), new Date(to))).toBe(words);
  });
});
