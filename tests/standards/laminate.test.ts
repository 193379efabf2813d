import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { fibreFractionOf, glassPercent, laminatePly, stackOf, type Ply } from '@hull-record/trade';
import { publishedCases } from '../support/published-cases.js';

publishedCases('laminate');

const ply = fc.record({
  arealMassKgPerM2: fc.double({ min: 0.05, max: 3, noNaN: true }),
  fibreMassFraction: fc.double({ min: 0.15, max: 0.75, noNaN: true }),
});

describe('thickness of glass and polyester', () => {
  it("the short form is the long one: t = w / 3.072 (2.56 / psi - 1.36) (derived; same physics in a resin maker's article)", () => {
    fc.assert(
      fc.property(ply, (one: Ply) => {
        const short = (one.arealMassKgPerM2 / 3.072) * (2.56 / one.fibreMassFraction - 1.36);
        expect(laminatePly(one).thicknessMm).toBeCloseTo(short, 9);
        expect(fibreFractionOf(one.arealMassKgPerM2, short)).toBeCloseTo(one.fibreMassFraction, 9);
      }),
    );
  });

  it('a stack is as thick as from its total fibre fraction (derived: the formula is additive)', () => {
    fc.assert(
      fc.property(fc.array(ply, { minLength: 1, maxLength: 12 }), (plies: readonly Ply[]) => {
        const whole = stackOf(plies);
        const one = laminatePly({ arealMassKgPerM2: whole.glassKgPerM2, fibreMassFraction: whole.fibreMassFraction });
        expect(one.thicknessMm).toBeCloseTo(whole.thicknessMm, 9);
        expect(one.massKgPerM2).toBeCloseTo(whole.massKgPerM2, 9);
      }),
    );
  });
});

describe('burn-off (ISO 1172, formulas from memory)', () => {
  const masses = { crucibleG: 20, withSpecimenG: 25, withResidueG: 22 };

  it('method A reads filler as glass: with 0.5 g of filler it is 10 per cent of the specimen too high (derived)', () => {
    expect(glassPercent(masses, 'A')).toBeCloseTo(40, 9);
    expect(glassPercent(masses, 'B', 1.5)).toBeCloseTo(30, 9);
  });

  it('method B asks for the glass apart', () => {
    expect(() => glassPercent(masses, 'B')).toThrow('glass');
  });
});
