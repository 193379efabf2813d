import { describe, expect, it } from '@jest/globals';
import {
  isCalendarDate,
  NotACalendarDate,
  NumberInvalid,
  requireBetween,
  requireCalendarDate,
  requireFinite,
  requireNotNegative,
  requirePositive,
  TradeError,
} from '@hull-record/trade';
import fc from 'fast-check';

const finite = fc.double({ noNaN: true, noDefaultInfinity: true });

describe('numbers that a rule can work with', () => {
  it.each([
    ['a finite number', () => requireFinite('mass', 1.5), 1.5],
    ['a finite number below zero', () => requireFinite('mass', -1.5), -1.5],
    ['more than zero', () => requirePositive('mass', 0.001), 0.001],
    ['zero', () => requireNotNegative('mass', 0), 0],
    ['more than zero where zero is fine', () => requireNotNegative('mass', 2), 2],
    ['between two bounds', () => requireBetween('fraction', 0.5, 0, 1), 0.5],
    ['just above the lower bound', () => requireBetween('fraction', Number.MIN_VALUE, 0, 1), Number.MIN_VALUE],
  ])('%s is given back as it is', (_what, given, value) => {
    expect(given()).toBe(value);
  });

  it.each([
    ['mass', NaN, () => requireFinite('mass', NaN), 'a finite number'],
    ['mass', Infinity, () => requireFinite('mass', Infinity), 'a finite number'],
    ['mass', -Infinity, () => requireFinite('mass', -Infinity), 'a finite number'],
    ['mass', NaN, () => requirePositive('mass', NaN), 'a finite number'],
    ['mass', Infinity, () => requirePositive('mass', Infinity), 'a finite number'],
    ['mass', 0, () => requirePositive('mass', 0), 'more than zero'],
    ['mass', -1, () => requirePositive('mass', -1), 'more than zero'],
    ['mass', NaN, () => requireNotNegative('mass', NaN), 'a finite number'],
    ['mass', -0.5, () => requireNotNegative('mass', -0.5), 'zero or more'],
    ['fraction', NaN, () => requireBetween('fraction', NaN, 0, 1), 'a finite number'],
    ['fraction', 0, () => requireBetween('fraction', 0, 0, 1), 'more than 0 and less than 1'],
    ['fraction', 1, () => requireBetween('fraction', 1, 0, 1), 'more than 0 and less than 1'],
    ['fraction', -2, () => requireBetween('fraction', -2, 0, 1), 'more than 0 and less than 1'],
    ['fraction', 3, () => requireBetween('fraction', 3, 0, 1), 'more than 0 and less than 1'],
  ])('a %s of %d is refused with its name, its value and what it must be', (name, value, wrong, must) => {
    expect(wrong).toThrow(NumberInvalid);
    expect(wrong).toThrow(
      expect.objectContaining({
        name: 'NumberInvalid',
        code: 'number-invalid',
        message: `${name} is ${value}; it must be ${must}.`,
        data: { name, value },
      }),
    );
  });

  it('of two numbers of opposite sign only one is more than zero', () => {
    fc.assert(
      fc.property(
        finite.filter((value) => value !== 0),
        (value) => {
          const size = Math.abs(value);
          expect(requirePositive('size', size)).toBe(size);
          expect(() => requirePositive('size', -size)).toThrow(TradeError);
          expect(() => requireNotNegative('size', -size)).toThrow(TradeError);
        },
      ),
    );
  });

  it('what lies between two bounds is neither of them', () => {
    fc.assert(
      fc.property(finite, finite, finite, (a, b, c) => {
        const [above = 0, value = 0, below = 0] = [a, b, c].sort((x, y) => x - y);
        fc.pre(above < value && value < below);
        expect(requireBetween('value', value, above, below)).toBe(value);
        expect(() => requireBetween('value', above, value, below)).toThrow(NumberInvalid);
        expect(() => requireBetween('value', below, above, value)).toThrow(NumberInvalid);
        expect(() => requireBetween('value', above, above, below)).toThrow(NumberInvalid);
      }),
    );
  });
});

describe('the form of a calendar day', () => {
  it.each(['2026', '2026-05', '+012026-05-31', '-002026-05-31', '2026-05-31 ', ' 2026-05-31', '20260531', '26-05-31'])(
    '"%s" is not written as YYYY-MM-DD',
    (text) => {
      expect(isCalendarDate(text)).toBe(false);
    },
  );

  it('a day is given back as it is', () => {
    expect(requireCalendarDate('2026-05-31')).toBe('2026-05-31');
  });

  it('a refusal repeats the text and says how a day is written', () => {
    expect(() => requireCalendarDate('31.5.2026')).toThrow(NotACalendarDate);
    expect(() => requireCalendarDate('31.5.2026')).toThrow(
      expect.objectContaining({
        name: 'NotACalendarDate',
        code: 'not-a-calendar-date',
        message: '"31.5.2026" is not a calendar date. Write the year, month and day as YYYY-MM-DD.',
        data: { text: '31.5.2026' },
      }),
    );
  });
});
