import { describe, expect, it } from '@jest/globals';
import { TOPICS } from '../cases/check.js';
import { CHECKS } from '../cases/checks/index.js';
import { runCase } from '../cases/run-case.js';

describe('the case runner', () => {
  it('has a check for each of its topics', () => {
    expect(new Set(Object.values(CHECKS).map(({ topic }) => topic))).toEqual(new Set(TOPICS));
  });

  it('fails a wrong expectation, an unknown check, an unknown key and an input that the check does not take', () => {
    const good = { id: 'x', check: 'retention.years', input: { day: '2024-02-29', years: 10 }, expected: '2034-03-01' };
    expect(runCase(good).passed).toBe(true);
    for (const wrong of [
      { ...good, expected: '2034-02-28' },
      { ...good, check: 'retention.eons' },
      { ...good, more: 1 },
      { ...good, input: { ...good.input, month: 2 } },
      { ...good, check: undefined },
    ])
      expect(runCase(wrong).passed).toBe(false);
  });
});
