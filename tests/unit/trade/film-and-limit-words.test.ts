import { describe, expect, it } from '@jest/globals';
import { coverageFt2PerUsGal, FilmNotPositive, judgeSpot, onExampleGauge } from '@hull-record/trade';

describe('what is said of films and limits', () => {
  it.each([0, -2, NaN])('a film of %d mil is refused with its figure', (mil) => {
    expect(() => coverageFt2PerUsGal(mil)).toThrow(FilmNotPositive);
    expect(() => coverageFt2PerUsGal(mil)).toThrow(
      expect.objectContaining({
        code: 'film-not-positive',
        message: `A film of ${mil} mil covers nothing; give a thickness above 0.`,
        data: { mil },
      }),
    );
  });

  it('feet are read on the steps in mil, as inches are', () => {
    expect(onExampleGauge(0.001, 'ft')).toBe(true);
    expect(onExampleGauge(0.0005, 'ft')).toBe(true);
    expect(onExampleGauge(0.00125, 'ft')).toBe(false);
  });

  it('a film too thick to be written in mil is on no gauge', () => {
    expect(onExampleGauge(1e308, 'ft')).toBe(false);
  });

  it.each([
    [{ low: 16, unit: 'Barcol' }, { min: 16, unit: 'mil' }, 'A reading in Barcol cannot be held to limits in mil.'],
    [{ low: NaN, unit: 'mil' }, { min: 16, unit: 'mil' }, 'The reading is not a finite number.'],
    [
      { low: 16, high: 16, unit: 'mil' },
      { min: 16, unit: 'mil' },
      'The interval of the reading is empty: its high end is not above its low end.',
    ],
    [{ low: 16, unit: 'mil' }, { unit: 'mil' }, 'No limit is set.'],
    [{ low: 16, unit: 'mil' }, { max: Infinity, unit: 'mil' }, 'A limit is not a finite number.'],
    [
      { low: 16, unit: 'mil' },
      { min: 20, max: 16, unit: 'mil' },
      'The limits contradict each other: min is above max.',
    ],
  ] as const)('%j against %j cannot be judged, and the note says why', (spot, limits, note) => {
    expect(judgeSpot(spot, limits)).toEqual({ verdict: 'cannot be judged', crossesLimit: false, note });
  });
});
