import { describe, expect, it } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { CaseFile, type Case } from '../cases/case.js';
import { TOPICS } from '../cases/check.js';
import { CHECKS } from '../cases/checks/index.js';
import { runCase } from '../cases/run-case.js';

const CASES = CaseFile.parse(JSON.parse(readFileSync('tests/standards/cases/trade.json', 'utf8'))) as Case[];

describe('published and derived values of the trade', () => {
  it.each(CASES.map((each) => [each.id, each.source ?? '', each] as const))('%s (%s)', (_id, _source, each) => {
    expect(runCase(each)).toMatchObject({ passed: true });
  });
});

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
