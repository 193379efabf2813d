import { describe, expect, it } from '@jest/globals';
import { isCalendarDate, isExpired, NotACalendarDate } from '@hull-record/trade';
import fc from 'fast-check';

const day = fc
  .date({ min: new Date('1970-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));

describe('calendar dates', () => {
  it.each(['2024-02-29', '2026-12-31', '2000-02-29', '0000-01-01'])('%s is a day', (text) => {
    expect(isCalendarDate(text)).toBe(true);
  });

  it.each([
    '2026-02-29',
    '1900-02-29',
    '2026-04-31',
    '2026-13-01',
    '2026-00-10',
    '2026-1-1',
    '2026-05-31T00:00:00Z',
    '',
  ])('"%s" is no day', (text) => {
    expect(isCalendarDate(text)).toBe(false);
    expect(() => isExpired(text, '2026-05-31')).toThrow(NotACalendarDate);
    expect(() => isExpired('2026-05-31', text)).toThrow(NotACalendarDate);
  });
});

describe('expiry', () => {
  it('never comes on the day itself, and once expired a lot stays so', () => {
    fc.assert(
      fc.property(day, day, day, (expiresOn, a, b) => {
        expect(isExpired(expiresOn, expiresOn)).toBe(false);
        const [earlier, later] = a < b ? [a, b] : [b, a];
        if (isExpired(expiresOn, earlier)) expect(isExpired(expiresOn, later)).toBe(true);
      }),
    );
  });
});
