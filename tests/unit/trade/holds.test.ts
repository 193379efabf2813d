import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  concernOf,
  earliestArguable,
  holdFigures,
  HULL_DISPOSITIONS,
  HULL_STATES,
  hullStateAfter,
  inspectionOf,
  isDisposed,
  isSameScope,
  mayGoBy,
  noticeDates,
  notifiedBy,
  WHOLE_SCOPE,
  widerFields,
  type HoldScope,
} from '@hull-record/trade';

describe('the state of a hull that a hold reached', () => {
  it.each([
    [null, null, 'in build'],
    ['HIN affixed', null, 'in build'],
    ['released', null, 'in stock'],
    ['left the place of manufacture', null, 'on the way'],
    ['left the place of manufacture', 'Northlight Marine', 'at dealer'],
    ['warranty registered', 'Northlight Marine', 'with owner'],
    ['returned', null, 'in stock'],
    ['exported', null, 'exported'],
    ['scrapped', null, 'scrapped'],
  ])('after %s, of dealer %s, is %s', (newest, dealer, state) => {
    expect(hullStateAfter(newest, dealer)).toBe(state);
  });
});

describe('a hull that a hold reached', () => {
  it('is disposed by anything but the finding that the fault is there; scrapped, by itself', () => {
    expect(HULL_DISPOSITIONS.map((what) => isDisposed('at dealer', what))).toEqual([false, true, true, true, true]);
    expect([isDisposed('in build', null), isDisposed('scrapped', null), isDisposed('scrapped', 'found')]).toEqual([
      false,
      true,
      true,
    ]);
  });

  it('counts once in each figure it belongs to, and every hull is open or disposed', () => {
    const hull = fc.record({
      state: fc.constantFrom(...HULL_STATES, null),
      said: fc.array(fc.constantFrom(...HULL_DISPOSITIONS), { maxLength: 4 }),
    });
    fc.assert(
      fc.property(fc.array(hull), (hulls) => {
        const figures = holdFigures(hulls);
        expect(figures.open + figures.disposed).toBe(hulls.length);
        expect(figures.found).toBeLessThanOrEqual(figures.lookedAt);
        expect(Math.max(figures.repaired, figures.found)).toBe(figures.found);
        expect(figures.open === 0).toBe(hulls.every(({ state, said }) => isDisposed(state, said.at(-1) ?? null)));
      }),
    );
  });
});

describe('the scope of a hold', () => {
  const scope: HoldScope = {
    minShare: 0.1,
    zone: 'bottom',
    from: '2026-01-05T00:00:00Z',
    until: '2026-02-01T00:00:00Z',
  };

  it('is only ever narrowed', () => {
    expect(widerFields(WHOLE_SCOPE, scope)).toEqual([]);
    expect(widerFields(scope, WHOLE_SCOPE)).toEqual(['minShare', 'zone', 'from', 'until']);
    expect(widerFields(scope, { ...scope, zone: 'side' })).toEqual(['zone']);
    expect(widerFields(scope, { ...scope, from: '2026-01-05T01:00:00+02:00' })).toEqual(['from']);
    expect(isSameScope(scope, { ...scope, from: '2026-01-05T02:00:00+02:00' })).toBe(true);
  });
});

describe('the dates of a notice', () => {
  const none = { discoveredOn: null, notifiedOn: null, initialReportOn: null, followUpOn: null };
  const told = (facts: object, today: string) =>
    noticeDates({ ...none, ...facts }, today).map(({ what, dueOn, state, days }) => [what, dueOn, state, days]);

  it('run from a decision alone', () => {
    expect(told({ initialReportOn: '2026-04-01' }, '2026-12-31')).toEqual([
      ['notice', null, 'does not run', null],
      ['initial report', null, 'does not run', null],
      ['follow-up report', null, 'does not run', null],
    ]);
  });

  it('are 30 days from discovery, and 60 from the initial report (33 CFR 179.05, 179.15(a))', () => {
    expect(told({ discoveredOn: '2026-03-02' }, '2026-04-01')).toEqual([
      ['notice', '2026-04-01', 'due', 0],
      ['initial report', '2026-04-01', 'due', 0],
      ['follow-up report', null, 'does not run', null],
    ]);
    const reported = { discoveredOn: '2026-03-02', notifiedOn: '2026-04-02', initialReportOn: '2026-04-01' };
    expect(told(reported, '2026-06-01')).toEqual([
      ['notice', '2026-04-01', 'done late', -61],
      ['initial report', '2026-04-01', 'done in time', -61],
      ['follow-up report', '2026-05-31', 'late', -1],
    ]);
  });

  it('have the initial report with the notice: on the day on which that was given, when it is sooner (179.13)', () => {
    const given = { discoveredOn: '2026-03-02', notifiedOn: '2026-03-10' };
    expect(told(given, '2026-03-10')[1]).toEqual(['initial report', '2026-03-10', 'due', 0]);
    expect(told(given, '2026-03-12')[1]).toEqual(['initial report', '2026-03-10', 'late', -2]);
  });

  it('stand beside the earliest day from which somebody might argue', () => {
    const days = [
      { on: '2026-02-20', what: 'hold placed' },
      { on: '2026-01-31', what: 'first report' },
    ];
    expect(earliestArguable(days)).toEqual({ on: '2026-01-31', what: 'first report' });
    expect(earliestArguable([])).toBeNull();
  });
});

describe('the mail of a notice', () => {
  it('to purchasers is first-class or certified; dealers may be told faster, in writing', () => {
    expect(mayGoBy('dealer', 'more expeditious, in writing')).toBe(true);
    expect(mayGoBy('first purchaser', 'more expeditious, in writing')).toBe(false);
    expect(mayGoBy('later owner', 'first-class mail')).toBe(true);
  });
});

describe('a boat that a notice may concern', () => {
  it('is noticed when it has left, and was made inside the ten-year look-back (46 USC 4310(b), (c)(2))', () => {
    const left = { leftPlant: true, builtOn: '2015-02-10' };
    expect([concernOf(left, '2025-02-09'), concernOf(left, '2025-02-11')]).toEqual(['noticed', 'outside']);
    expect(concernOf({ ...left, leftPlant: false }, '2025-02-09')).toBe('contained');
    expect(concernOf({ ...left, builtOn: null }, '2099-01-01')).toBe('noticed');
  });

  it('is corrected by a repair, until the fault is found in it again', () => {
    expect(inspectionOf([])).toEqual({ inspected: 'not yet', corrected: false });
    expect(inspectionOf(['checked'])).toEqual({ inspected: 'none', corrected: false });
    expect(inspectionOf(['cleared'])).toEqual({ inspected: 'not yet', corrected: false });
    expect(inspectionOf(['found', 'repaired'])).toEqual({ inspected: 'defect', corrected: true });
    expect(inspectionOf(['found', 'repaired', 'found'])).toEqual({ inspected: 'defect', corrected: false });
  });

  it('has its purchaser notified by any letter that did not come back', () => {
    expect([[], [true], [true, false]].map((all) => notifiedBy(all.map((returned) => ({ returned }))))).toEqual([
      'not yet',
      'returned',
      'yes',
    ]);
  });
});
