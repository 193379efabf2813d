import { describe, expect, it } from '@jest/globals';
import { NOTICE_HOLDS } from '@hull-record/trade';
import { publishedCases } from '../support/published-cases.js';

publishedCases('retention');

describe('a defect notice', () => {
  it('a notice holds what both rules ask (46 USC 4310(d); 33 CFR 179.09)', () => {
    const by = (source: string): readonly string[] =>
      NOTICE_HOLDS.filter((each) => each.source === source).map(({ what }) => what);
    expect(by('46 USC 4310(d)')).toEqual([
      'description of the defect',
      'evaluation of the hazard',
      'measures to correct it',
      "undertaking to correct it at the maker's cost",
    ]);
    expect(by('33 CFR 179.09')).toHaveLength(2);
  });
});
