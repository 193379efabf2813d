import { describe, expect, it } from '@jest/globals';
import { coverageFt2PerUsGal, filmInterval, judgeSpot, judgeSpots, onExampleGauge } from '@hull-record/trade';
import { publishedCases } from '../support/published-cases.js';

publishedCases('wet-film');

describe('the interval of a notch gauge', () => {
  it('last wet 16, next dry 18 is recorded as 16 and lies in [16, 18) mil = [406.4, 457.2) um (finishing guidebook on ASTM D4414; recorded: kta.com, read the highest wetted step)', () => {
    const film = filmInterval(16, 18, 'mil');
    expect(film).toMatchObject({ recorded: 16, low: 16, high: 18, unit: 'mil' });
    expect(film.lowUm).toBeCloseTo(406.4, 10);
    expect(film.highUm).toBeCloseTo(457.2, 10);
  });
});

describe('steps of the example gauge of ASTM D4414-95(2020) 7.1.2', () => {
  it.each([0.5, 1, 5.5, 6, 7, 9, 10, 12, 16, 18, 20, 28, 30, 35, 40])('%d mil is on the gauge', (mil) => {
    expect(onExampleGauge(mil, 'mil')).toBe(true);
  });

  it.each([0.3, 6.5, 9.5, 11, 17, 19, 29, 31, 32, 38])('%d mil is not on the gauge', (mil) => {
    expect(onExampleGauge(mil, 'mil')).toBe(false);
  });

  it.each([13, 26, 150, 175, 225, 250, 300, 450, 750, 875, 1000])('%d um is on the gauge', (um) => {
    expect(onExampleGauge(um, 'um')).toBe(true);
  });

  it.each([160, 240, 275, 457.2, 725, 800, 900])('%d um is not on the gauge', (um) => {
    expect(onExampleGauge(um, 'um')).toBe(false);
  });
});

describe('coverage', () => {
  it('a US gallon of 231 cubic inches covers 1604.17 ft2 at 1 mil (derived; a page that prints 1600 rounds)', () => {
    expect(coverageFt2PerUsGal(1)).toBeCloseTo(1604.17, 2);
  });

  it('a US gallon covers 89.1 ft2 at 18 mil (derived)', () => {
    expect(coverageFt2PerUsGal(18)).toBeCloseTo(89.1, 1);
  });
});

describe('a window of 16 to 20 mil (factory target from memory; the rule to judge each spot is derived)', () => {
  const limits = { min: 16, max: 20, unit: 'mil' } as const;
  const mil = (low: number) => ({ low, unit: 'mil' }) as const;

  it('16, 18 and 20 mil are all inside', () => {
    expect(judgeSpots([16, 18, 20].map(mil), limits).map(({ verdict }) => verdict)).toEqual(Array(3).fill('inside'));
  });

  it('14, 18 and 20 mil have one spot outside, although their mean of 17.33 is inside', () => {
    const verdicts = judgeSpots([14, 18, 20].map(mil), limits);
    expect(verdicts.map(({ verdict }) => verdict)).toEqual(['outside', 'inside', 'inside']);
    expect(verdicts[0]?.side).toBe('low');
    expect(judgeSpot(mil((14 + 18 + 20) / 3), limits).verdict).toBe('inside');
  });

  it('16 to 20 mil is 406.4 to 508 um, so the ends pass in either unit', () => {
    const um = { min: 406.4, max: 508, unit: 'um' } as const;
    expect(judgeSpots([16, 20].map(mil), um).map(({ verdict }) => verdict)).toEqual(['inside', 'inside']);
  });
});
