import { describe, expect, it } from '@jest/globals';
import { DEFECT_KINDS, FLAW_ACCEPTANCE, fromSi, judgeFlaw, toSi } from '@hull-record/trade';
import { publishedCases } from '../support/published-cases.js';

publishedCases('flaws');

describe('the default acceptance table', () => {
  it('the default table says it is of a withdrawn standard, row by row (ASTM D2563 was withdrawn in 2024)', () => {
    for (const { source } of FLAW_ACCEPTANCE) expect(source).toContain('withdrawn 2024');
  });

  it.each(FLAW_ACCEPTANCE.map(({ kind }) => kind))('level I permits none of any kind: %s (ASTM D2563 1.4)', (kind) => {
    expect(judgeFlaw({ kind, size: 0.001, unit: 'mm' }, 'I').verdict).toBe('rejected');
  });

  it('every kind of the vocabulary has one code, and every row of the table is a kind (derived)', () => {
    const codes = DEFECT_KINDS.filter(({ source }) => source.startsWith('ASTM D2563')).map(({ code }) => code);
    expect(codes).toHaveLength(27);
    expect(new Set(codes).size).toBe(27);
    expect(new Set(FLAW_ACCEPTANCE.map(({ kind }) => kind)).size).toBe(FLAW_ACCEPTANCE.length);
  });

  it('1 in2 and 1 ft2 are exact in the counts of the table, where the standard rounds to 0.1 m2 (derived)', () => {
    const areaOf = (kind: string): number | undefined =>
      FLAW_ACCEPTANCE.find((row) => row.kind === kind)?.II?.count?.areaMm2;
    expect(areaOf('air-bubble')).toBeCloseTo(25.4 ** 2, 9);
    expect(areaOf('foreign-inclusion')).toBeCloseTo(fromSi(toSi(1, 'ft2'), 'm2') * 1e6, 6);
  });
});
