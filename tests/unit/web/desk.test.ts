import { describe, expect, it } from '@jest/globals';
import { decimal, wrongOf } from '../../../apps/web/src/entry/entry-field.js';
import { plantInstant } from '../../../apps/web/src/entry/plant-instant.js';
import { dueOf, inOrderOfNeed } from '../../../apps/web/src/equipment/due.js';
import { certificateOf } from '../../../apps/web/src/store/certificate-values.js';
import { labelsOf } from '../../../apps/web/src/store/labels-of.js';
import { tankShape } from '../../../apps/web/src/store/tank-shape.js';

describe('a time of day by the clock of the plant', () => {
  it.each([
    ['2026-01-05T07:30', 'America/New_York', '2026-01-05T12:30:00.000Z'],
    ['2026-07-05T07:30', 'America/New_York', '2026-07-05T11:30:00.000Z'],
    ['2026-03-08T03:30', 'America/New_York', '2026-03-08T07:30:00.000Z'],
    ['2026-01-05T07:30', 'Asia/Kolkata', '2026-01-05T02:00:00.000Z'],
    ['2026-01-05T07:30', 'UTC', '2026-01-05T07:30:00.000Z'],
  ])('%s in %s is %s', (shown, zone, instant) => {
    expect(plantInstant(shown, zone)).toBe(instant);
  });
});

describe('a tank that is drawn', () => {
  it('has area for kilograms: of the tank, and of each lot in it', () => {
    const shares = [
      { source: 'A', kg: 300 },
      { source: 'B', kg: 100 },
    ];
    const large = tankShape(1_000, 2_000, shares);
    const perKg = (large.width * large.height) / 1_000;
    const areas = large.bands.map(({ width, height }) => width * height);
    expect(areas[0]).toBeCloseTo(300 * perKg, 6);
    expect(areas[1]).toBeCloseTo(100 * perKg, 6);
    const largest = tankShape(2_000, 2_000, []);
    expect((largest.width * largest.height) / 2_000).toBeCloseTo(perKg, 9);
  });

  it('is full, and no more, when the book says more than it holds', () => {
    const { height, bands } = tankShape(100, 100, [{ source: 'A', kg: 150 }]);
    expect(bands[0]).toMatchObject({ y: 0, height });
  });
});

describe('what is wrong with what was typed', () => {
  const fields = [
    { name: 'quantity', label: 'How much', pointer: '/amount/quantity' },
    { name: 'amount', label: 'Amount', pointer: '/amount' },
    { name: 'code', label: 'Code' },
  ];

  it('stands at the field that is pointed to deepest, and elsewhere when no field is', () => {
    const wrong = wrongOf(fields, [
      { pointer: '/amount/quantity', detail: 'must be more than zero' },
      { pointer: '/amount/unit', detail: 'is none' },
      { pointer: '/codes', detail: 'no field' },
    ]);
    expect(wrong).toEqual({
      at: { quantity: 'must be more than zero', amount: 'is none' },
      elsewhere: ['no field'],
    });
  });
});

describe('what is typed', () => {
  it('is a decimal with a point or a comma, and digits in groups', () => {
    expect([' 1 250,5 ', '0.75', '12'].map(decimal)).toEqual(['1250.5', '0.75', '12']);
  });

  it('is a certificate, a value a line, numbers as numbers', () => {
    expect(certificateOf('gel time min: 14\n\ncolour: white, clean\nno colon')).toEqual({
      ...{ 'gel time min': 14, colour: 'white, clean' },
      'no colon': 'no colon',
    });
  });

  it('numbers containers on from those that have a label, and no part of one', () => {
    expect(labelsOf('R-1', 2, 3)).toEqual(['R-1-4', 'R-1-5']);
    expect([labelsOf('R-1', 0, 0), labelsOf('R-1', 1.5, 0), labelsOf('R-1', 201, 0)]).toEqual([[], [], []]);
  });
});

describe('equipment', () => {
  const days = { gun: 1, other: 365 };
  const at = Date.parse('2026-06-10T12:00:00Z');
  const checked = (code: string, kind: string, good: boolean, happenedAt: string) => ({
    ...{ code, kind },
    lastCheck: { good, happenedAt },
  });
  const gun = checked('G-1', 'gun', true, '2026-06-09T06:00:00Z');
  const gauge = checked('M-1', 'gauge', true, '2026-06-09T06:00:00Z');
  const unfit = checked('M-2', 'gauge', false, '2026-06-10T06:00:00Z');
  const never = { code: 'M-3', kind: 'gauge', lastCheck: null };

  it('is unfit, never checked, due or fit, and stands in that order', () => {
    expect([gun, gauge, unfit, never].map((each) => dueOf(each, days, at))).toEqual(['due', 'fit', 'unfit', 'never']);
    expect(inOrderOfNeed([gun, gauge, unfit, never], days, at).map(({ code }) => code)).toEqual([
      ...['M-2', 'M-3', 'G-1', 'M-1'],
    ]);
  });
});
