import { describe, expect, it } from '@jest/globals';
import { groupsOf } from '../../../apps/service/src/cases/inputs/groups-of.js';

const dayOf = (day: string): number => Date.parse(day) / 86_400_000;
const hulls = (model: string, built: string, count: number) =>
  Array.from({ length: count }, () => ({ model, built: dayOf(built) }));

describe('sizes of groups', () => {
  it('are counted by quarter, by model, by both and by nothing', () => {
    const all = [
      ...hulls('A', '2026-01-01', 19),
      ...hulls('A', '2026-04-01', 20),
      ...hulls('B', '2026-03-31', 5),
      ...hulls('B', '2025-12-31', 1),
    ];
    expect(groupsOf(all)).toEqual([
      { strata: ['build quarter', 'model'], groups: 4, hullsInSmall: 25 },
      { strata: ['model'], groups: 2, hullsInSmall: 6 },
      { strata: ['build quarter'], groups: 3, hullsInSmall: 1 },
      { strata: [], groups: 1, hullsInSmall: 0 },
    ]);
  });

  it('are none of no hulls', () => {
    expect(groupsOf([]).map(({ groups }) => groups)).toEqual([0, 0, 0, 0]);
  });
});
