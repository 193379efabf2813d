import { describe, expect, it } from '@jest/globals';
import { timesOf } from '../../../apps/web/src/words/times.js';

// New York is 5 h behind UTC in winter and 4 h in summer (IANA time zone database).
describe('a time', () => {
  const plant = timesOf('en', 'America/New_York');

  it.each([
    ['2026-01-06T03:30:00Z', '5 Jan 2026', '22:30'],
    ['2026-07-06T03:30:00Z', '5 Jul 2026', '23:30'],
    ['2026-01-05T00:30:00-05:00', '5 Jan 2026', '00:30'],
  ])('%s is of the day and hour at the plant', (at, day, minute) => {
    expect([plant.day(at), plant.minute(at)]).toEqual([day, minute]);
  });

  it('names the zone and its offset then', () => {
    expect(plant.zone(new Date('2026-01-05T12:00:00Z'))).toBe('America/New_York, GMT\u221205:00');
    expect(plant.zone(new Date('2026-07-05T12:00:00Z'))).toBe('America/New_York, GMT\u221204:00');
  });

  it('is said in Spanish to those who chose it', () => {
    expect(timesOf('es', 'UTC').day('2026-01-05T12:00:00Z')).toBe('5 ene 2026');
  });

  it('leaves a calendar day what it is, wherever the plant is', () => {
    for (const zone of ['Pacific/Auckland', 'America/Los_Angeles'])
      expect(timesOf('en', zone).calendarDay('2026-01-05')).toBe('5 Jan 2026');
  });

  it('is UTC, and says so, where the zone is not known', () => {
    const lost = timesOf('en', 'Nowhere/At_All');
    expect([lost.minute('2026-01-05T12:00:00Z'), lost.zone(new Date(0))]).toEqual(['12:00', 'UTC']);
  });
});
