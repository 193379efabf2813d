import { describe, expect, it } from '@jest/globals';
import type { PartView } from '@hull-record/contracts';
import { cutOf, openingOf, orderOf, type Plan } from '../../../apps/web/src/bay/repair/order.js';

const mat = { arealMass: { value: 450, unit: 'g/m2' }, fibreMassFraction: 0.3 };

/** A gel coat, a skin coat of two mats and a core; outside in. */
const part = {
  layers: [
    { scheduled: { code: 'L1', name: 'Gel coat', plies: [] }, demand: null },
    {
      scheduled: { code: 'L2', name: 'Skin coat', plies: ['first mat', 'second mat'], laminate: { plies: [mat, mat] } },
      demand: { thicknessMm: 2 },
    },
    { scheduled: { code: 'L3', name: 'Core', plies: ['foam'] }, demand: null },
    {
      scheduled: { code: 'L4', name: 'Inner skin', plies: [], laminate: { plies: [mat] } },
      demand: { thicknessMm: 1 },
    },
  ],
} as unknown as PartView;

const PLAN: Plan = { lengthMm: 100, widthMm: 100, depthMm: 6, originalMm: 6, ratio: 12, sides: 'one' };

describe('what is ground out to reach a layer', () => {
  it('is every layer from the damaged one to the side that is ground, its plies from the bottom', () => {
    const outside = cutOf(part, 'L3', 'outside');
    expect(outside).toMatchObject({ layers: ['L3', 'L2', 'L1'], cutMm: 2, wholeMm: 3, untold: ['L3', 'L1'] });
    expect(outside.plies.map(({ words }) => words)).toEqual(['first mat', 'second mat']);
    expect(cutOf(part, 'L2', 'inside')).toMatchObject({ layers: ['L2', 'L3', 'L4'], cutMm: 3 });
    expect(cutOf(part, 'L2', 'inside').plies.map(({ layer }) => layer)).toEqual(['L2', 'L2', 'L4']);
  });

  it('is all of it where the layer is not known', () => {
    expect(cutOf(part, null, 'outside').layers).toEqual(['L4', 'L3', 'L2', 'L1']);
    expect(cutOf(part, null, 'inside').layers).toEqual(['L1', 'L2', 'L3', 'L4']);
  });

  it('has the areal mass of each ply in kilograms per square metre', () => {
    expect(cutOf(part, 'L2', 'outside').plies[0]).toMatchObject({ arealMassKgPerM2: 0.45, fibreMassFraction: 0.3 });
  });
});

describe('the order of a repair', () => {
  it('has a patch of 244 mm for an opening of 100 mm in 6 mm at 12:1', () => {
    expect(orderOf(PLAN, [])).toMatchObject({ taperMm: 72, outerLengthMm: 244, outerWidthMm: 244, findings: [] });
  });

  it('tapers half the depth from each side when it is tapered from both', () => {
    expect(orderOf({ ...PLAN, sides: 'both' }, [])).toMatchObject({ taperMm: 36, findings: [] });
  });

  it('finds a taper under 12:1, and a patch that is thinner than what it replaces', () => {
    const rules = orderOf({ ...PLAN, ratio: 8 }, cutOf(part, 'L2', 'outside').plies)?.findings.map(({ rule }) => rule);
    expect(rules).toEqual(['taper too short', 'thickness differs']);
  });

  it('sizes each ply to cover the taper up to its own top', () => {
    const patch = orderOf(PLAN, cutOf(part, 'L2', 'outside').plies)?.patch;
    const [first, second] = patch?.plies ?? [];
    expect((first?.lengthMm ?? 0) - 100).toBeCloseTo(((second?.lengthMm ?? 0) - 100) / 2, 6);
  });

  it('waits for every figure', () => {
    expect(orderOf({ ...PLAN, depthMm: Number.NaN }, [])).toBeNull();
    expect(orderOf({ ...PLAN, lengthMm: 0 }, [])).toBeNull();
  });
});

describe('the opening around defects', () => {
  const defect = (lengthMm: number | null, widthMm: number | null) => ({ lengthMm, widthMm }) as never;

  it('is as large as the largest of them', () => {
    expect(openingOf([defect(22, 14), defect(9, 30)])).toEqual({ lengthMm: 22, widthMm: 30 });
    expect(openingOf([defect(22, null)])).toEqual({ lengthMm: 22, widthMm: 22 });
    expect(openingOf([defect(null, null)])).toEqual({ lengthMm: undefined, widthMm: undefined });
  });
});
