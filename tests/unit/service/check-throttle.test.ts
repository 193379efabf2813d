import { describe, expect, it } from '@jest/globals';
import { TooManyTries } from '../../../apps/service/src/platform/access/access-refusals.js';
import { CheckThrottle } from '../../../apps/service/src/records/certificates/check-throttle.js';

describe('checks of certificates from one address', () => {
  it('take longer with each one that finds nothing, up to three seconds; others are not slowed down', () => {
    const throttle = new CheckThrottle(() => 0);
    const waits = Array.from({ length: 25 }, () => {
      throttle.count('a');
      return throttle.missed('a');
    });
    expect(waits.slice(0, 4)).toEqual([150, 300, 450, 600]);
    expect(waits.slice(-3)).toEqual([3_000, 3_000, 3_000]);
    throttle.count('b');
    expect(throttle.missed('b')).toBe(150);
  });

  it('are thirty a minute, found or not; the next has to wait for what is left of it', () => {
    let now = 0;
    const throttle = new CheckThrottle(() => now);
    for (let i = 0; i < 30; i += 1) throttle.count('a');
    now = 45_000;
    expect(() => throttle.count('a')).toThrow(new TooManyTries(15));
    now = 60_000;
    expect(() => throttle.count('a')).not.toThrow();
    expect(throttle.missed('a')).toBe(150);
  });

  it('forgets the address that asked longest ago when there are too many', () => {
    const throttle = new CheckThrottle(() => 0);
    for (let i = 0; i < 30; i += 1) throttle.count('first');
    for (let i = 0; i < 10_000; i += 1) throttle.count(`other ${i}`);
    expect(() => throttle.count('first')).not.toThrow();
  });
});
