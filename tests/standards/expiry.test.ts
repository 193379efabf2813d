import { describe, expect, it } from '@jest/globals';
import { isExpired } from '@hull-record/trade';

const RULE = 'LR Rules for Materials, July 2022, Ch 14 Sec 5, 5.3.4: no batch later than expiry';

describe(`a lot that expires on 2026-05-31 (${RULE})`, () => {
  it.each([
    ['2026-05-30', false],
    ['2026-05-31', false],
    ['2026-06-01', true],
    ['2027-01-01', true],
    ['2025-12-31', false],
  ])('used on %s it is expired: %s', (on, expired) => {
    expect(isExpired('2026-05-31', on)).toBe(expired);
  });
});
