import { describe, expect, it } from '@jest/globals';
import {
  calibrationOn,
  daysAfter,
  isSuspect,
  NotACalendarDate,
  recallWindow,
  type GaugeCheck,
} from '@hull-record/trade';
import fc from 'fast-check';

const good = (on: string): GaugeCheck => ({ on, good: true });
const bad = (on: string): GaugeCheck => ({ on, good: false });
const day = fc.integer({ min: 0, max: 2000 }).map((days) => daysAfter('2024-01-01', days));
const checks = fc.array(fc.record({ on: day, good: fc.boolean() }), { maxLength: 12 });

describe('how a gauge stands on a day', () => {
  it.each([
    ['without a check', [], '2026-06-01', 'never checked'],
    ['before its first check', [good('2026-06-02')], '2026-06-01', 'never checked'],
    ['on the day of its check', [good('2026-06-01')], '2026-06-01', 'checked'],
    ['on the last day of its interval', [good('2026-06-01')], '2026-07-01', 'checked'],
    ['the day after', [good('2026-06-01')], '2026-07-02', 'due'],
    ['after a bad check', [bad('2026-06-01')], '2026-06-02', 'failed'],
    ['long after a bad check', [bad('2026-06-01')], '2027-06-01', 'failed'],
    ['on the day of a bad check', [good('2026-05-01'), bad('2026-06-01')], '2026-06-01', 'failed'],
    ['put right after a bad check', [bad('2026-06-01'), good('2026-06-05')], '2026-06-06', 'checked'],
    ['the day before a bad check', [good('2026-06-01'), bad('2026-06-05')], '2026-06-04', 'checked'],
    ['checks entered in any order', [bad('2026-06-05'), good('2026-06-01')], '2026-06-06', 'failed'],
    ['the newest in the middle', [good('2026-05-01'), good('2026-06-20'), bad('2026-06-01')], '2026-07-15', 'checked'],
  ] as const)('%s', (_when, all, on, state) => {
    expect(calibrationOn(all, on, 30)).toBe(state);
  });

  it.each([
    [[good('2026-06-01')], '2026-06-31'],
    [[good('2026-06-31')], '2026-07-01'],
  ] as const)('a day that does not exist is refused: %j on %s', (all, on) => {
    expect(() => calibrationOn(all, on, 30)).toThrow(NotACalendarDate);
  });

  it('what comes after the day changes nothing, and once due it stays due until the next check', () => {
    fc.assert(
      fc.property(checks, day, fc.nat({ max: 400 }), (all, on, later) => {
        const known = all.filter((check) => check.on <= on);
        const state = calibrationOn(known, on, 30);
        expect(calibrationOn(all, on, 30)).toBe(state);
        if (state === 'due') expect(calibrationOn(known, daysAfter(on, later), 30)).toBe('due');
      }),
    );
  });
});

describe('readings to question after a bad check', () => {
  it.each([
    ['no check before', [bad('2026-07-10')], null],
    ['one good check', [good('2026-04-10'), bad('2026-07-10')], '2026-04-10'],
    ['the last of two', [good('2026-05-10'), good('2026-04-10'), bad('2026-07-10')], '2026-05-10'],
    ['a bad one between', [good('2026-04-10'), bad('2026-06-10'), bad('2026-07-10')], '2026-04-10'],
    ['a good one after', [good('2026-04-10'), bad('2026-07-10'), good('2026-07-12')], '2026-04-10'],
    ['put right on the day itself', [good('2026-04-10'), bad('2026-07-10'), good('2026-07-10')], '2026-04-10'],
  ] as const)('begin after the last good check before it: %s', (_what, all, after) => {
    expect(recallWindow(all, '2026-07-10')).toEqual({ after, until: '2026-07-10' });
  });

  it('a day that does not exist is refused', () => {
    expect(() => recallWindow([], '2026-02-30')).toThrow(NotACalendarDate);
    expect(() => recallWindow([good('2026-02-30')], '2026-03-30')).toThrow(NotACalendarDate);
    expect(() => isSuspect('2026-02-30', { after: '2026-01-01', until: '2026-03-30' })).toThrow(NotACalendarDate);
  });

  it.each([
    ['2026-04-10', '2026-04-10', false],
    ['2026-04-11', '2026-04-10', true],
    ['2026-07-10', '2026-04-10', true],
    ['2026-07-11', '2026-04-10', false],
    ['1999-01-01', null, true],
    ['2026-07-10', null, true],
    ['2026-07-11', null, false],
  ] as const)('a reading of %s, good check %p, bad one 2026-07-10: %s', (takenOn, after, suspect) => {
    expect(isSuspect(takenOn, { after, until: '2026-07-10' })).toBe(suspect);
  });

  it('never reach back to a day of a good check, and always hold the day of the bad one', () => {
    fc.assert(
      fc.property(checks, day, (all, badOn) => {
        const window = recallWindow(all, badOn);
        expect(isSuspect(badOn, window)).toBe(true);
        for (const { on } of all.filter((check) => check.good && check.on < badOn)) {
          expect(isSuspect(on, window)).toBe(false);
        }
      }),
    );
  });
});
