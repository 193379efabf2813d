import { describe, expect, it } from '@jest/globals';
import { bottomAreaM2 } from '@hull-record/trade';

const station = (xMm: number, waterlineGirthMm?: number) => ({
  ...{ xMm, edgeGirthMm: 2_000 },
  ...(waterlineGirthMm === undefined ? {} : { waterlineGirthMm }),
});

describe('the area below the waterline', () => {
  it('is that of both sides, by trapezoids between stations', () => {
    const box = { lengthMm: 10_000, stations: [station(0, 1_000), station(10_000, 1_000)] };
    expect(bottomAreaM2(box)).toBe(20);
    const wedge = { lengthMm: 8_000, stations: [station(0, 1_500), station(4_000, 1_500), station(8_000, 500)] };
    expect(bottomAreaM2(wedge)).toBe(20);
  });

  it('is not known where a station has no waterline', () => {
    expect(bottomAreaM2({ lengthMm: 8_000, stations: [station(0, 1_000), station(8_000)] })).toBeUndefined();
  });
});
