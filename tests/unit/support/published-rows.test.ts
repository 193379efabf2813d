import { describe, expect, it } from '@jest/globals';
import { readRows, rowFaults, type PublishedRow } from '../../standards/published-rows.mjs';

const row: PublishedRow = { row: '3/1', topic: 'units', code: 'D', fact: '1 mil', source: 'exact', tests: ['1 mil'] };
const ran = { file: 'units', name: 'pairs 1 mil is 25.4 um', passed: true };

describe('the list of published rows against the tests that ran', () => {
  it('agrees when each row has a test of its topic that passed', () => {
    expect(rowFaults([row], [ran])).toEqual([]);
  });

  it.each([
    ['no such test ran', [row], [], 'no test of units'],
    ['it ran in another topic', [row], [{ ...ran, file: 'film' }], 'no test of units'],
    ['one of its tests failed', [row], [ran, { ...ran, passed: false }], 'did not pass'],
    ['a row stands twice', [row, row], [ran], 'twice'],
    ['a row names neither test nor reason', [{ ...row, tests: undefined }], [ran], 'either'],
    ['a row names both', [{ ...row, why: 'x' }], [ran], 'either'],
    ['a row names no source', [{ ...row, source: '' }], [ran], 'names no'],
  ])('differs when %s', (_when, rows, tests, fault) => {
    expect(rowFaults(rows as readonly PublishedRow[], tests).join()).toContain(fault);
  });

  it('is read from the committed files, some with a reason instead of a test', () => {
    const rows = readRows();
    expect(rows.length).toBeGreaterThan(250);
    expect(rows.some(({ why }) => why !== undefined)).toBe(true);
  });
});
