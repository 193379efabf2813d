import { describe, expect, it } from '@jest/globals';
import { attribute, SETTINGS, type Exposure } from '@hull-record/statistics';

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

describe('a class of lots in exactly the same hulls', () => {
  // X is a trace in the hulls that came back and all of it elsewhere; Y is all of it everywhere.
  const judged = {
    ages: new Float64Array(60).fill(100),
    claimed: Uint8Array.from({ length: 60 }, (_, hull) => (hull < 5 || hull === 50 ? 1 : 0)),
    strata: new Uint32Array(60),
  };
  const x = {
    ...lot('X', 'resin', run(0, 12)),
    shares: Float64Array.from({ length: 12 }, (_, i) => (i < 5 ? 0.06 : 1)),
  };
  const y = { ...lot('Y', 'glass', run(0, 12)), shares: new Float64Array(12).fill(1) };
  const settings = { ...SETTINGS, thresholds: [0.05], worlds: 0 };

  it('is weighed the same whichever of them comes first', () => {
    const [one, other] = [attribute(judged, [x, y], settings), attribute(judged, [y, x], settings)];
    expect(one.rows[0]?.posterior?.typical).toBeGreaterThan(0.8);
    expect(other.rows.map(({ posterior, dose }) => [posterior, dose])).toEqual(
      one.rows.map(({ posterior, dose }) => [posterior, dose]),
    );
  });
});

describe('the trend with share', () => {
  it('takes in hulls with less than the threshold of the test', () => {
    const judged = {
      ages: new Float64Array(60).fill(100),
      claimed: Uint8Array.from({ length: 60 }, (_, hull) => (hull < 6 ? 1 : 0)),
      strata: new Uint32Array(60),
    };
    const heel: Exposure = {
      ...lot('HEEL', 'resin', run(0, 40)),
      shares: Float64Array.from({ length: 40 }, (_, i) => (i < 10 ? 1 : 0.03)),
    };
    const [row] = attribute(judged, [heel], { ...SETTINGS, thresholds: [0.05], worlds: 0 }).rows;
    expect(row?.suspect.hulls.length).toBe(10);
    expect(row?.dose?.z).toBeGreaterThan(4);
  });
});

describe('the leader', () => {
  it('is the class that the verdict is given for, also where another has the larger posterior', () => {
    // All nine of A in a small stratum came back, which its stratum expects; in the large one those of B did.
    const hulls = 110;
    const back = new Set([...run(0, 9), 12, 14, 15, 16, 17, 18]);
    const judged = {
      ages: new Float64Array(hulls).fill(100),
      claimed: Uint8Array.from({ length: hulls }, (_, hull) => (back.has(hull) ? 1 : 0)),
      strata: Uint32Array.from({ length: hulls }, (_, hull) => (hull < 12 ? 0 : 1)),
    };
    const runs = Array.from({ length: 9 }, (_, i) => lot(`N${i}`, 'resin', run(12 + 10 * i, 22 + 10 * i)));
    const found = attribute(judged, [lot('A', 'resin', run(0, 9)), ...runs], { ...SETTINGS, worlds: 0 });
    expect(found.leader?.strength).not.toBe('none');
    expect(found.leader).toBe(
      found.rows.find(({ strength }) => strength === 'strong') ??
        found.rows.find(({ strength }) => strength !== 'none'),
    );
    expect(found.rows[0]?.suspect.members[0]?.lot).toBe('A');
    expect(found.leader?.suspect.members[0]?.lot).toBe('N0');
  });
});
