import fc from 'fast-check';
import { describe, expect, it } from '@jest/globals';
import { ageNames, evenSteps } from '../../../libs/paper/src/inquiry/age-axis.js';
import { ratioAxis } from '../../../libs/paper/src/inquiry/ratio-axis.js';
import { layOutTriangle } from '../../../libs/paper/src/inquiry/triangle-layout.js';
import { aTriangle } from '../../support/papers/inquiry-view.js';

const layOut = (rows: number, months: number) =>
  layOutTriangle(aTriangle(rows, months), 360, (count) => 4.6 * String(count).length);

describe('the triangle on paper', () => {
  it('keeps single months while they have room', () => {
    const layout = layOut(14, 20);
    expect(layout).toMatchObject({ monthsDown: 1, monthsAcross: 1, columns: 20 });
    expect(layout.rows[12]).toMatchObject({ label: '2027-01', hulls: 5, claims: 7 });
    expect(layout.rows[0]?.cells.slice(0, 2)).toEqual([
      { claims: 1, atRisk: 5 },
      { claims: 0, atRisk: 5 },
    ]);
  });

  it('takes months together where they have none, and then says quarters and years', () => {
    expect(
      layOut(100, 20)
        .rows.slice(0, 5)
        .map(({ label }) => label),
    ).toEqual([...['2026 Q1', '2026 Q2', '2026 Q3', '2026 Q4', '2027 Q1']]);
    expect(layOut(200, 20).rows[1]?.label).toBe('2027');
    expect(layOut(3, 100)).toMatchObject({ monthsAcross: 3, columns: 34 });
  });

  it('loses no claim and no hull-month, however many are taken together', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 150 }), (rows, months) => {
        const layout = layOut(rows, months);
        const cells = layout.rows.flatMap((row) => row.cells);
        expect(cells.reduce((sum, { atRisk }) => sum + atRisk, 0)).toBe(5 * rows * months);
        expect(layout.rows.reduce((sum, { claims }) => sum + claims, 0)).toBe(rows * Math.ceil(months / 3));
        expect(layout.rows.length).toBeLessThanOrEqual(42);
        expect(layout.columns * layout.cellWidth).toBeLessThanOrEqual(360.001);
      }),
    );
  });

  it('has nothing to lay out of no hulls', () => {
    expect(layOut(0, 0)).toMatchObject({ rows: [], most: 0 });
  });
});

describe('an axis of ratios', () => {
  it('runs from a power of ten to another, with 1 in its place', () => {
    const axis = ratioAxis([{ ratio: 3.3, lower: 1.2, upper: 7.2 }]);
    expect(axis.ticks).toEqual([0.1, 1, 10]);
    expect([axis.at(0.1), axis.at(1), axis.at(10)]).toEqual([0, 0.5, 1]);
  });

  it('ends where ratios are beyond reading, and has them at its ends', () => {
    const axis = ratioAxis([{ ratio: 1e9, lower: 0, upper: null }]);
    expect(axis.ticks.at(-1)).toBe(1000);
    expect([axis.at(1e9), axis.at(0)]).toEqual([1, 0]);
  });
});

describe('axes of ages and of even steps', () => {
  it('name at most seven ages, from 0 on', () => {
    expect(ageNames(400).map(([, name]) => name)).toEqual(['0', '2', '4', '6', '8', '10', '12']);
    expect(ageNames(7_000).length).toBeLessThanOrEqual(7);
  });

  it('reach the value in at most five steps', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (most) => {
        const steps = evenSteps(most);
        expect(steps.at(-1)).toBeGreaterThanOrEqual(most * (1 - 1e-5));
        expect(steps.length).toBeLessThanOrEqual(7);
      }),
    );
    expect(evenSteps(0.26)).toEqual([0, 0.1, 0.2, 0.3]);
  });
});
