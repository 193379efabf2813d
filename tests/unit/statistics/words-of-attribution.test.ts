import { describe, expect, it } from '@jest/globals';
import { attribute, SETTINGS } from '@hull-record/statistics';

const run = (from: number, to: number): Uint32Array => Uint32Array.from({ length: to - from }, (_, i) => from + i);
const lot = (name: string, family: string, hulls: Uint32Array) => ({ lot: name, family, hulls });

describe('the word of a case', () => {
  // 23 hulls of one stratum: six of seven with BAD come back, none of the others.
  const judged = {
    ages: Float64Array.from({ length: 23 }, (_, hull) => (hull < 6 ? 120 + hull : 330 - hull)),
    claimed: Uint8Array.from({ length: 23 }, (_, hull) => (hull < 6 ? 1 : 0)),
    strata: new Uint32Array(23),
  };
  const exposures = [
    ...[lot('BAD', 'resin', run(0, 7)), lot('GOOD-1', 'resin', run(7, 16)), lot('GOOD-2', 'resin', run(16, 23))],
    ...[lot('MAT-A', 'glass', run(0, 12)), lot('MAT-B', 'glass', run(12, 23))],
  ];
  const quick = { ...SETTINGS, worlds: 0 };

  it('is given by backgrounds up to a half: one of nine tenths leaves hardly a claim to a lot', () => {
    const found = attribute(judged, exposures, quick);
    expect(found.verdict).toBe('strong');
    expect(found.rows[0]?.leastPosterior).toBeGreaterThan(0.9);
    expect(found.rows[0]?.posterior?.least).toBeLessThan(0.9);
    expect(attribute(judged, exposures, { ...quick, wordsUpTo: 1 }).verdict).toBe('suggestive');
  });
});
