import { describe, expect, it } from '@jest/globals';
import { fromSi, judgeSpot, judgeSpots, toSi, UNITS, type Limits, type UnitCode } from '@hull-record/trade';
import fc from 'fast-check';

const window: Limits = { min: 16, max: 20, unit: 'mil' };

describe('one spot against its limits', () => {
  it.each([
    [15.999999, 'outside', 'low'],
    [16, 'inside', undefined],
    [18, 'inside', undefined],
    [20, 'inside', undefined],
    [20.000001, 'outside', 'high'],
    [20 + 4e-15, 'outside', 'high'],
  ] as const)('%d mil in a window of 16 to 20 mil is %s', (low, verdict, side) => {
    const judged = judgeSpot({ low, unit: 'mil' }, window);
    expect(judged.verdict).toBe(verdict);
    expect(judged.side).toBe(side);
    expect(judged.crossesLimit).toBe(false);
  });

  it.each([
    [16, 'mil', { min: 16, unit: 'mil' }],
    [16, 'mil', { min: 406.4, unit: 'um' }],
    [16, 'mil', { max: 406.4, unit: 'um' }],
    [406.4, 'um', { min: 16, max: 16, unit: 'mil' }],
    [0.4064, 'mm', { min: 16, max: 16, unit: 'mil' }],
    [77, 'F', { min: 25, max: 25, unit: 'C' }],
    [0, 'C', { min: 32, max: 32, unit: 'F' }],
    [1.8, '%', { min: 0.018, max: 0.018, unit: '1' }],
  ] as const)('%d %s meets the same limit in either unit: %j', (low, unit, limits) => {
    expect(judgeSpot({ low, unit }, limits).verdict).toBe('inside');
  });

  it.each([
    [405.9, 'outside'],
    [406.39999, 'outside'],
    [406.4, 'inside'],
  ] as const)('nothing is rounded on the way: %d um against 16 mil is %s', (low, verdict) => {
    expect(judgeSpot({ low, unit: 'um' }, { min: 16, unit: 'mil' }).verdict).toBe(verdict);
  });
});

describe('an interval of a stepped gauge against its limits', () => {
  it.each([
    [12, 14, 'outside', false, 'wholly below'],
    [14, 16, 'outside', false, 'its high end is not in it'],
    [14, 18, 'outside', true, 'the film may be thick enough'],
    [16, 18, 'inside', false, 'wholly within'],
    [18, 20, 'inside', false, 'its high end is not in it'],
    [18, 22, 'inside', true, 'the film may be too thick'],
    [20, 22, 'inside', true, 'the film may be too thick'],
    [22, 24, 'outside', false, 'wholly above'],
    [14, 25, 'outside', true, 'it spans the window'],
  ] as const)('[%d, %d) mil in 16 to 20 mil is %s, crossing %s: %s', (low, high, verdict, crossesLimit, _why) => {
    expect(judgeSpot({ low, high, unit: 'mil' }, window)).toMatchObject({ verdict, crossesLimit });
  });

  it('the ends of an interval meet converted limits without crossing them', () => {
    const um = { min: 406.4, max: 508, unit: 'um' } as const;
    expect(judgeSpot({ low: 14, high: 16, unit: 'mil' }, um)).toMatchObject({
      verdict: 'outside',
      crossesLimit: false,
    });
    expect(judgeSpot({ low: 18, high: 20, unit: 'mil' }, um)).toMatchObject({ verdict: 'inside', crossesLimit: false });
    expect(judgeSpot({ low: 20, high: 22, unit: 'mil' }, um)).toMatchObject({ verdict: 'inside', crossesLimit: true });
  });
});

describe('what cannot be judged', () => {
  it.each([
    ['no number', { low: NaN, unit: 'mil' }, window],
    ['an endless value', { low: Infinity, unit: 'mil' }, window],
    ['an open interval', { low: 16, high: Infinity, unit: 'mil' }, window],
    ['an empty interval', { low: 16, high: 16, unit: 'mil' }, window],
    ['another dimension', { low: 16, unit: 'Barcol' }, window],
    ['a mass of a mat held to its areal mass', { low: 1.5, unit: 'oz' }, { min: 1.5, unit: 'oz/ft2' }],
    ['no limit', { low: 16, unit: 'mil' }, { unit: 'mil' }],
    ['a limit that is no number', { low: 16, unit: 'mil' }, { min: NaN, unit: 'mil' }],
    ['limits the wrong way round', { low: 18, unit: 'mil' }, { min: 20, max: 16, unit: 'mil' }],
  ] as const)('%s is neither inside nor outside, and the note says why', (_what, value, limits) => {
    const judged = judgeSpot(value, limits);
    expect(judged).toEqual({ verdict: 'cannot be judged', crossesLimit: false, note: expect.any(String) });
    expect(judged.note).not.toBe('');
  });
});

describe('verdicts at large', () => {
  const lengths = (Object.keys(UNITS) as UnitCode[]).filter((code) => UNITS[code].dimension === 'length');
  const unit = fc.constantFrom(...lengths);
  const value = fc.double({ min: 0.001, max: 1000, noNaN: true });

  it('a value meets itself as a limit in every unit', () => {
    fc.assert(
      fc.property(value, unit, unit, (low, from, to) => {
        const limit = from === to ? low : fromSi(toSi(low, from), to);
        expect(judgeSpot({ low, unit: from }, { min: limit, max: limit, unit: to }).verdict).toBe('inside');
      }),
    );
  });

  it('a millionth beyond a limit is outside in every unit', () => {
    fc.assert(
      fc.property(value, unit, unit, (limit, from, to) => {
        const beyond = fromSi(toSi(limit * (1 + 1e-6), from), to);
        expect(judgeSpot({ low: beyond, unit: to }, { max: limit, unit: from })).toMatchObject({ side: 'high' });
        expect(judgeSpot({ low: limit, unit: from }, { min: beyond, unit: to })).toMatchObject({ side: 'low' });
      }),
    );
  });

  it('each spot is judged as if it were alone', () => {
    const spots = fc.array(value.map((low) => ({ low, unit: 'mil' as const })));
    fc.assert(
      fc.property(spots, (values) => {
        expect(judgeSpots(values, window)).toEqual(values.map((spot) => judgeSpot(spot, window)));
      }),
    );
  });
});
