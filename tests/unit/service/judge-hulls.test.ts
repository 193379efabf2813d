import { describe, expect, it } from '@jest/globals';
import { attribute } from '@hull-record/statistics';
import { judgedArrays } from '../../../apps/service/src/cases/answer/judged-arrays.js';
import { judgeHulls } from '../../../apps/service/src/cases/inputs/judge-hulls.js';
import type { ClaimOfHull, HullsOfCase } from '../../../apps/service/src/cases/inputs/load-hulls.js';
import type { CaseSettings } from '../../../apps/service/src/cases/settings.js';
import { caseSettings } from '../../study/case-of-plant.js';

const DAY_MS = 86_400_000;
const day = (date: string): number => Date.parse(date) / DAY_MS;

interface Hull {
  readonly left: string | null;
  readonly scrapped?: string;
  readonly letter?: string;
  readonly claims?: readonly Partial<Record<'on' | 'reported' | 'recorded', string>>[];
  readonly prompted?: boolean;
}

const claimsOf = ({ claims = [], prompted = false }: Hull): readonly ClaimOfHull[] =>
  claims.map(({ on = '', reported = on, recorded = reported }) => ({
    ...{ on: day(on), reported: day(reported), prompted, recordedAt: `${recorded}T12:00:00Z` },
  }));

const caseOf = (hulls: readonly Hull[]): HullsOfCase => ({
  hulls: hulls.map(({ left, scrapped }, i) => ({
    ...{ id: `id ${i}`, number: `H${i}`, normalised: `H${i}`, model: 'TS86', built: day('2023-01-10'), parts: [] },
    ...{ left: left === null ? null : day(left), atDealer: null, sold: null, registered: null },
    scrapped: scrapped === undefined ? null : day(scrapped),
  })),
  claims: new Map(hulls.flatMap((hull, i) => (hull.claims ? [[`id ${i}`, claimsOf(hull)] as const] : []))),
  letters: new Map(hulls.flatMap(({ letter }, i) => (letter ? [[`id ${i}`, day(letter)] as const] : []))),
});

const WHEN = {
  ...{ frozenAt: new Date('2025-01-01T09:00:00Z'), frozenOn: '2025-01-01', lookedOn: '2026-01-01' },
};
const settings = (more: Partial<CaseSettings> = {}): CaseSettings => ({
  ...caseSettings(),
  ...{ origin: 'left the place of manufacture', cutOff: '2025-07-01', claims: 'all', strata: [] },
  ...more,
});
const judged = (hull: Hull, more: Partial<CaseSettings> = {}) => judgeHulls(caseOf([hull]), settings(more), WHEN);
const FRESH = { claims: 'recorded after this freeze' } as const;

describe('a hull of a case', () => {
  it.each<[string, Hull, object]>([
    ['is watched until the cut-off', { left: '2024-01-01' }, { age: 547, claimed: false, running: true, from: 0 }],
    [
      'ends with its first claim',
      { left: '2024-01-01', claims: [{ on: '2024-03-01' }] },
      { age: 60, claimed: true, running: false },
    ],
    [
      'is watched until it was scrapped, and has no claim ahead',
      { left: '2024-01-01', scrapped: '2024-02-01' },
      { age: 31, claimed: false, running: false },
    ],
    [
      'is watched until a letter was mailed to it',
      { left: '2024-01-01', letter: '2024-03-01' },
      { age: 60, claimed: false, running: true },
    ],
    [
      'is watched until a prompted claim, and has no first one ahead',
      { left: '2024-01-01', prompted: true, claims: [{ on: '2024-03-01' }] },
      { age: 60, claimed: false, running: false },
    ],
    [
      'has a claim of the day of its origin at half a day',
      { left: '2024-01-01', claims: [{ on: '2024-01-01' }] },
      { age: 0.5, claimed: true },
    ],
  ])('%s', (_what, hull, expected) => {
    expect(judged(hull).hulls).toEqual([expect.objectContaining(expected)]);
  });

  it.each<[string, Hull, Partial<CaseSettings>, object]>([
    [
      'without the day of its origin',
      { left: null, claims: [{ on: '2024-03-01' }] },
      {},
      { withoutOrigin: 1, withoutOriginWithClaim: 1 },
    ],
    ['that came to its origin after the cut-off', { left: '2025-08-01' }, {}, { notLaunched: 1 }],
    [
      'with a claim from before its origin',
      { left: '2024-01-01', claims: [{ on: '2023-12-31' }] },
      {},
      { beforeOrigin: 1 },
    ],
    [
      'with a claim recorded before the freeze',
      { left: '2024-01-01', claims: [{ on: '2024-03-01' }] },
      FRESH,
      { before: 1 },
    ],
    [
      'with a known claim that is filed again after the freeze, noticed earlier',
      { left: '2024-01-01', claims: [{ on: '2024-02-20', recorded: '2025-02-01' }, { on: '2024-03-01' }] },
      FRESH,
      { before: 1 },
    ],
    [
      'with a claim noticed before the freeze and recorded after it',
      { left: '2024-01-01', claims: [{ on: '2024-12-01', recorded: '2025-02-01' }] },
      FRESH,
      { before: 1 },
    ],
    [
      'that was not watched any more at the freeze',
      { left: '2024-01-01', scrapped: '2024-06-01' },
      FRESH,
      { before: 1 },
    ],
  ])('%s is left out, and counted', (_what, hull, more, expected) => {
    const { hulls, leftOut } = judged(hull, more);
    expect(hulls).toEqual([]);
    expect(leftOut).toMatchObject(expected);
  });

  it('has no claim that counts when it was reported after the cut-off, whenever it was noticed', () => {
    const { hulls, leftOut } = judged({ left: '2024-01-01', claims: [{ on: '2024-03-01', reported: '2025-08-01' }] });
    expect(hulls).toMatchObject([{ claimed: false, age: 547, running: false }]);
    expect(leftOut.late).toBe(1);
  });

  it('has no repeated claim either that was reported after the cut-off', () => {
    const late = { on: '2024-04-01', reported: '2025-08-01' };
    const claims = [{ on: '2024-03-01' }, late, { on: '2024-05-01' }];
    expect(judged({ left: '2024-01-01', claims }).hulls).toMatchObject([{ claimed: true, claimAges: [60, 121] }]);
  });

  it('is never looked at further than the day of the look', () => {
    expect(judged({ left: '2024-01-01' }, { cutOff: '2099-01-01' }).watchedUntil).toBe('2026-01-01');
    expect(judged({ left: '2024-01-01' }, { cutOff: '2099-01-01', reportLagDays: 30 }).watchedUntil).toBe('2025-12-02');
  });

  it('is at risk from the day after the freeze on, where claims recorded after it alone count', () => {
    const { hulls } = judged({ left: '2024-01-01', claims: [{ on: '2025-03-01' }] }, FRESH);
    expect(hulls).toMatchObject([{ from: 366, age: 425, claimed: true }]);
    expect(judged({ left: '2025-02-01' }, FRESH).hulls).toMatchObject([{ from: 0, age: 150 }]);
  });

  it('makes a look exploratory when any claim of it was on record at the freeze', () => {
    const claims = [{ on: '2024-03-01', recorded: '2025-02-01' }, { on: '2024-04-01' }];
    expect(judged({ left: '2024-01-01', claims }).exploratory).toBe(true);
    expect(judged({ left: '2024-01-01', claims: claims.slice(0, 1) }).exploratory).toBe(false);
  });
});

describe('claims recorded after the freeze', () => {
  // Half of the hulls are five years old at the freeze, half are new; claims come evenly at any age.
  const hulls = Array.from({ length: 400 }, (_, i): Hull => {
    const left = i % 2 === 0 ? '2020-01-01' : '2024-12-01';
    const on = new Date(Date.parse('2025-01-02') + ((i * 37) % 180) * DAY_MS).toISOString().slice(0, 10);
    return { left, ...(i % 20 < 2 ? { claims: [{ on }] } : {}) };
  });

  it('do not accuse the lots of young hulls: old ones are not at risk at an age that they had before', () => {
    const { hulls: all } = judgeHulls(caseOf(hulls), settings(FRESH), WHEN);
    const young = Uint32Array.from(all.flatMap((_, i) => (i % 2 === 1 ? [i] : [])));
    const exposures = [{ lot: 'YOUNG', family: 'resin', hulls: young }];
    const { verdict, rows, untestable } = attribute(judgedArrays(all), exposures);
    expect(all.filter(({ claimed }) => claimed).length).toBe(40);
    expect(verdict).toBe('no lot stands out');
    expect([...rows, ...untestable].every(({ p }) => p > 0.1)).toBe(true);
    // As if all had been watched from age 0 on, it would.
    const blind = judgedArrays(all.map((hull) => ({ ...hull, from: 0 })));
    expect(attribute(blind, exposures).rows[0]?.p).toBeLessThan(1e-6);
  });
});
