import { describe, expect, it } from '@jest/globals';
import { climateOf, judgeClimateTyped } from '../../../apps/web/src/station/climate-typed.js';
import { rulesToLift } from '../../../apps/web/src/station/rules-to-lift.js';

describe('the climate that is typed at the station', () => {
  it('goes into the record as far as it is a number, with a point or a comma', () => {
    expect(climateOf({ air: '25,5', humidity: '60', mold: '' }, 'C')).toEqual({
      airTemperature: { value: 25.5, unit: 'C' },
      relativeHumidity: { value: 60, unit: '%' },
    });
    expect(climateOf({ air: '', humidity: '140', mold: 'warm' }, 'F')).toBeUndefined();
  });

  it('is judged by the margin of the plant: 5 F are 2.78 C, so that 2.9 C pass one rule and fail the other', () => {
    // Dew point of 25 C at 60 % is 16.69 C (Magnus formula; Sonntag 1990, WMO Guide).
    const climate = climateOf({ air: '25', humidity: '60', mold: '19.6' }, 'C') ?? {};
    expect(judgeClimateTyped(climate, undefined, '5 F').margin).toMatchObject({ enough: true });
    expect(judgeClimateTyped(climate, undefined, '3 C').margin).toMatchObject({ enough: false });
  });

  it('is held to the limits of the layer, in whatever unit', () => {
    const limits = { airTemperature: { min: 18, max: 28, unit: 'C' } } as const;
    const air = (typed: string) =>
      judgeClimateTyped(climateOf({ air: typed, humidity: '', mold: '' }, 'F') ?? {}, limits, '3 C');
    expect([air('60').air, air('75').air, air('85').air]).toEqual(['low', 'inside', 'high']);
    expect(air('75')).toMatchObject({ humidity: null, margin: null });
  });
});

describe('the rules that a shift lead may go on over', () => {
  const stop = (rule: 'expired' | 'held' | 'unsigned') => ({ rule, about: 'x', detail: '' });
  const service = (rule: string, goesOn: 'shift lead' | 'nobody') => ({ rule, goesOn, detail: '', remedy: '' });

  it('are those that the service names, and none when one of them is lifted by nobody', () => {
    expect(rulesToLift([stop('held')], [service('lot-on-hold', 'shift lead')])).toEqual(['lot-on-hold']);
    expect(rulesToLift([], [service('expired-lot', 'shift lead'), service('lot-on-safety-hold', 'nobody')])).toBeNull();
  });

  it('with no network are not those of a hold, which may be one for safety', () => {
    expect(rulesToLift([stop('expired'), stop('unsigned')], [])).toEqual(['expired-lot', 'hold-point-passed']);
    expect(rulesToLift([stop('held')], [])).toBeNull();
  });
});
