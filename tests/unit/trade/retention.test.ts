import { describe, expect, it } from '@jest/globals';
import {
  daysAfter,
  followUpDue,
  followUpFigures,
  insideLookBack,
  keepUntil,
  NotACalendarDate,
  NOTICE_HOLDS,
  noticeDue,
  NumberInvalid,
  RETENTION_RULES,
  yearsAfter,
  type NoticedBoat,
  type RetentionRule,
} from '@hull-record/trade';
import fc from 'fast-check';

const day = fc.integer({ min: 0, max: 30_000 }).map((days) => daysAfter('1980-01-01', days));
const years = fc.integer({ min: 0, max: 100 });

describe('days counted on the calendar', () => {
  it.each([
    ['2026-02-27', 1, '2026-02-28'],
    ['2026-02-27', 2, '2026-03-01'],
    ['2028-02-28', 1, '2028-02-29'],
    ['2026-12-31', 1, '2027-01-01'],
    ['2026-01-01', -1, '2025-12-31'],
    ['2026-03-29', 0, '2026-03-29'],
    ['2026-01-01', 365, '2027-01-01'],
  ])('%s and %d days is %s', (from, days, to) => {
    expect(daysAfter(from, days)).toBe(to);
  });

  it.each([
    ['2026-05-31', 10, '2036-05-31'],
    ['2024-02-29', 1, '2025-03-01'],
    ['2024-02-29', 4, '2028-02-29'],
    ['2026-12-31', 0, '2026-12-31'],
  ])('%s and %d years is %s', (from, more, to) => {
    expect(yearsAfter(from, more)).toBe(to);
  });

  it.each([
    [() => daysAfter('2026-01-01', 0.5), 'days is 0.5; it must be a whole number.'],
    [() => daysAfter('2026-01-01', NaN), 'days is NaN; it must be a whole number.'],
    [() => yearsAfter('2026-01-01', 1.5), 'years is 1.5; it must be a whole number, zero or more.'],
    [() => yearsAfter('2026-01-01', -1), 'years is -1; it must be a whole number, zero or more.'],
  ])('what is no count of days or years is refused: %#', (wrong, message) => {
    expect(wrong).toThrow(NumberInvalid);
    expect(wrong).toThrow(expect.objectContaining({ message }));
  });

  it('a day that does not exist is refused', () => {
    expect(() => daysAfter('2026-02-30', 1)).toThrow(NotACalendarDate);
    expect(() => yearsAfter('2026-02-30', 1)).toThrow(NotACalendarDate);
  });

  it('days there and back again are the same day, and later is later', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: 1, max: 20_000 }), (from, days) => {
        expect(daysAfter(daysAfter(from, days), -days)).toBe(from);
        expect(daysAfter(from, days) > from).toBe(true);
      }),
    );
  });

  it('years later keep month and day, but for 29 February, which never comes too early', () => {
    fc.assert(
      fc.property(day, years, (from, more) => {
        const later = yearsAfter(from, more);
        expect(Number(later.slice(0, 4))).toBe(Number(from.slice(0, 4)) + more);
        expect(later.slice(5) >= from.slice(5)).toBe(true);
        if (!from.endsWith('02-29')) expect(later.slice(5)).toBe(from.slice(5));
      }),
    );
  });
});

describe('until when a record is kept', () => {
  const { EU, US } = RETENTION_RULES;
  const plant: RetentionRule = { market: 'plant', years: 30, from: 'built', source: 'house rule' };
  const dates = { builtOn: '2026-03-01', placedOn: '2026-09-15' };

  it.each([
    ['the US rule counts from the day it was built', [US], '2036-03-01', US],
    ['the EU rule counts from the day it was placed on the market', [EU], '2036-09-15', EU],
    ['the longest of two holds', [EU, US], '2036-09-15', EU],
    ['whatever order they come in', [US, EU], '2036-09-15', EU],
    ['a plant may keep records longer', [EU, plant, US], '2056-03-01', plant],
  ])('%s', (_what, rules, until, rule) => {
    expect(keepUntil(dates, rules)).toEqual({ day: until, rule });
  });

  it('a boat not yet placed on the market has its day only by rules that count from the build', () => {
    const unplaced = { builtOn: '2026-03-01', placedOn: null };
    expect(keepUntil(unplaced, [EU])).toBeNull();
    expect(keepUntil(unplaced, [EU, US])).toEqual({ day: '2036-03-01', rule: US });
    expect(keepUntil(dates, [])).toBeNull();
  });

  it('no rule asks for a later day than the one given', () => {
    const rule = fc.record({
      market: fc.constant('somewhere'),
      years,
      from: fc.constantFrom('built' as const, 'placed on the market' as const),
      source: fc.constant('as given'),
    });
    fc.assert(
      fc.property(day, day, fc.array(rule, { minLength: 1 }), (builtOn, placedOn, rules) => {
        const kept = keepUntil({ builtOn, placedOn }, rules);
        const days = rules.map((each) => keepUntil({ builtOn, placedOn }, [each])?.day ?? '');
        expect(days).toContain(kept?.day);
        expect(days.every((each) => each <= (kept?.day ?? ''))).toBe(true);
      }),
    );
  });
});

describe('the days of a defect notice', () => {
  it.each([
    ['2026-05-01', true],
    ['2026-04-30', true],
    ['2026-05-02', false],
  ])('a defect found on %s in a boat of 2016-05-01: inside the ten years %s', (foundOn, inside) => {
    expect(insideLookBack('2016-05-01', foundOn)).toBe(inside);
  });

  it('the day found must exist', () => {
    expect(() => insideLookBack('2016-05-01', '2026-13-01')).toThrow(NotACalendarDate);
  });

  it('notice is due within 30 days, the follow-up within 60', () => {
    expect(noticeDue('2026-01-01')).toBe('2026-01-31');
    expect(followUpDue('2026-01-01')).toBe('2026-03-02');
  });
});

describe('the figures of a defect notice', () => {
  const boat: NoticedBoat = { leftPlant: true, inspected: 'not yet', corrected: false, notified: 'not yet' };

  it('count the boats that left the plant, each by what was found and done', () => {
    const boats: NoticedBoat[] = [
      { ...boat, inspected: 'defect', corrected: true, notified: 'yes' },
      { ...boat, inspected: 'defect', notified: 'returned' },
      { ...boat, inspected: 'defect' },
      { ...boat, inspected: 'none', corrected: true, notified: 'yes' },
      { ...boat, inspected: 'none', notified: 'yes' },
      boat,
      boat,
      { ...boat, leftPlant: false, inspected: 'defect', corrected: true, notified: 'returned' },
    ];
    expect(followUpFigures(boats)).toEqual({ affected: 7, discovered: 3, completed: 2, notNotified: 1 });
  });

  it('are all zero without boats', () => {
    expect(followUpFigures([])).toEqual({ affected: 0, discovered: 0, completed: 0, notNotified: 0 });
  });

  it('a notice holds six things, the first four by statute', () => {
    expect(NOTICE_HOLDS.map(({ source }) => source)).toEqual([
      '46 USC 4310(d)',
      '46 USC 4310(d)',
      '46 USC 4310(d)',
      '46 USC 4310(d)',
      '33 CFR 179.09',
      '33 CFR 179.09',
    ]);
  });
});
