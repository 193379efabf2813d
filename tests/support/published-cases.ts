import { describe, expect, it } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { CaseFile, type Case } from '../cases/case.js';
import { runCase } from '../cases/run-case.js';

/** Holds the library to the values of a topic, by the runner that anybody's file of cases goes through. */
export const publishedCases = (topic: string): void => {
  const file = JSON.parse(readFileSync(`tests/standards/cases/${topic}.json`, 'utf8')) as unknown;
  const cases = CaseFile.parse(file) as Case[];
  describe(`values of ${topic}`, () => {
    it.each(cases.map((each) => [each.id, each.source ?? '', each] as const))('%s (%s)', (_id, _source, each) => {
      expect(runCase(each)).toMatchObject({ passed: true });
    });
  });
};
