import { describe, expect, it } from '@jest/globals';
import {
  LEAST_TAPER_RATIO,
  NumberInvalid,
  patchOf,
  plySizes,
  StackEmpty,
  TAPER_RATIOS,
  taperDegrees,
  taperLength,
  taperRatio,
  type Ply,
} from '@hull-record/trade';
import fc from 'fast-check';

const mm = fc.double({ min: 0.1, max: 1000, noNaN: true });
const ratio = fc.double({ min: 1, max: 100, noNaN: true });

describe('a taper', () => {
  it('of structure is 12:1 at least; ratios by load say where they come from', () => {
    expect(LEAST_TAPER_RATIO).toBe(12);
    expect(TAPER_RATIOS).toEqual({
      source: 'handbooks (from memory, confirm for the case)',
      values: { light: 8, usual: 12, 'highly loaded': 20 },
    });
  });

  it('is as long as the thickness times its ratio', () => {
    expect(taperLength(6, 12)).toBe(72);
    expect(taperRatio(72, 6)).toBe(12);
    expect(taperRatio(0, 6)).toBe(0);
  });

  it('of 1:1 stands at 45 degrees, and one of 12:1 at 4.76', () => {
    expect(taperDegrees(1)).toBeCloseTo(45, 10);
    expect(taperDegrees(12)).toBeCloseTo(4.7636, 4);
  });

  it.each([
    [() => taperLength(0, 12), 'thickness is 0; it must be more than zero.'],
    [() => taperLength(6, -1), 'taper ratio is -1; it must be more than zero.'],
    [() => taperDegrees(0), 'taper ratio is 0; it must be more than zero.'],
    [() => taperRatio(-1, 6), 'taper length is -1; it must be zero or more.'],
    [() => taperRatio(72, 0), 'thickness is 0; it must be more than zero.'],
    [() => patchOf({ diameterMm: 0 }, 6, 12), 'diameter is 0; it must be more than zero.'],
    [() => patchOf({ lengthMm: 0, widthMm: 50 }, 6, 12), 'length is 0; it must be more than zero.'],
    [() => patchOf({ lengthMm: 100, widthMm: NaN }, 6, 12), 'width is NaN; it must be a finite number.'],
  ])('a number that can be none is refused by name: %#', (wrong, message) => {
    expect(wrong).toThrow(NumberInvalid);
    expect(wrong).toThrow(expect.objectContaining({ message }));
  });

  it('has the ratio it was ground to', () => {
    fc.assert(
      fc.property(mm, ratio, (thickness, by) => {
        expect(taperRatio(taperLength(thickness, by), thickness)).toBeCloseTo(by, 9);
      }),
    );
  });

  it('lies flatter the longer it is', () => {
    fc.assert(
      fc.property(ratio, ratio, (a, b) => {
        fc.pre(a < b);
        expect(taperDegrees(b)).toBeLessThanOrEqual(taperDegrees(a));
      }),
    );
  });
});

describe('the patch over a damage', () => {
  it('of a hole of 100 mm in 6 mm at 12:1 is 244 mm across', () => {
    const patch = patchOf({ diameterMm: 100 }, 6, 12);
    expect(patch).toEqual({ lengthMm: 244, widthMm: 244, areaMm2: expect.closeTo(46_759.47, 2), taperMm: 72 });
  });

  it('of an oblong of 100 by 50 mm has its corners rounded with the taper', () => {
    // 100 x 50, four strips of 72 along the sides (21600), and four quarters of a circle of 72.
    const patch = patchOf({ lengthMm: 100, widthMm: 50 }, 6, 12);
    expect(patch).toEqual({ lengthMm: 244, widthMm: 194, areaMm2: expect.closeTo(42_886.016, 3), taperMm: 72 });
  });

  it('covers more than the damage and no more than the box around it', () => {
    fc.assert(
      fc.property(mm, mm, mm, ratio, (lengthMm, widthMm, thickness, by) => {
        const patch = patchOf({ lengthMm, widthMm }, thickness, by);
        expect(patch.areaMm2).toBeGreaterThan(lengthMm * widthMm);
        expect(patch.areaMm2).toBeLessThan(patch.lengthMm * patch.widthMm);
      }),
    );
  });
});

describe('the plies of a patch', () => {
  /** 0.94 mm thick each, with as much resin as glass. */
  const ply: Ply = { arealMassKgPerM2: 0.768, fibreMassFraction: 0.5 };
  /** 1.05078125 mm thick, with 1.05 kg of resin to 0.45 kg of glass. */
  const mat: Ply = { arealMassKgPerM2: 0.45, fibreMassFraction: 0.3 };

  it('each cover the hole and the taper up to their own top, and take glass and resin by their area', () => {
    const { plies, thicknessMm, glassKg, resinKg } = plySizes({ diameterMm: 100 }, [ply, ply], 12);
    expect(plies).toEqual([
      {
        lengthMm: expect.closeTo(122.56, 9),
        widthMm: expect.closeTo(122.56, 9),
        areaMm2: expect.closeTo(11_797.42, 1),
        glassKg: expect.closeTo(0.0090604, 6),
        resinKg: expect.closeTo(0.0090604, 6),
      },
      {
        lengthMm: expect.closeTo(145.12, 9),
        widthMm: expect.closeTo(145.12, 9),
        areaMm2: expect.closeTo(16_540.35, 1),
        glassKg: expect.closeTo(0.012703, 6),
        resinKg: expect.closeTo(0.012703, 6),
      },
    ]);
    expect(thicknessMm).toBeCloseTo(1.88, 9);
    expect(glassKg).toBeCloseTo(0.0217634, 6);
    expect(resinKg).toBeCloseTo(0.0217634, 6);
  });

  it('take resin by their own fibre fraction', () => {
    const { plies, glassKg, resinKg } = plySizes({ lengthMm: 1000, widthMm: 500 }, [mat], 12);
    // Taper 12.609375: 500000 + 2 x 12.609375 x 1500 + pi x 12.609375 squared.
    expect(plies[0]?.areaMm2).toBeCloseTo(538_327.6, 0);
    expect(glassKg).toBeCloseTo(0.242247, 5);
    expect(resinKg).toBeCloseTo(0.565244, 5);
  });

  it('none is no patch', () => {
    expect(() => plySizes({ diameterMm: 100 }, [], 12)).toThrow(StackEmpty);
    expect(() => plySizes({ diameterMm: 100 }, [ply], 0)).toThrow(NumberInvalid);
  });

  it('grow from the bottom up, the last as large as the patch of the whole thickness', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(ply, mat), { minLength: 1, maxLength: 12 }), mm, (plies, diameterMm) => {
        const plan = plySizes({ diameterMm }, plies, 12);
        const across = plan.plies.map(({ lengthMm }) => lengthMm);
        expect([...across].sort((a, b) => a - b)).toEqual(across);
        expect(across.at(-1)).toBeCloseTo(diameterMm + 24 * plan.thicknessMm, 6);
      }),
    );
  });
});
