import type { CaseGroups } from '@hull-record/contracts';
import { Months, Strata } from './strata.js';
import type { RolledHull } from '../../platform/roll/read-roll.js';

/**
 * Hulls in a group of fewer say little: a lot is in a run of hulls, and where a whole group has it, the group has no other
 * hulls to compare with. A rule of our own: the mean group should hold the run of a lot and as many besides.
 */
export const SMALL_GROUP = 20;

type Choice = CaseGroups['choices'][number];

const CHOICES: readonly Choice['strata'][] = [['build quarter', 'model'], ['model'], ['build quarter'], []];

/** Sizes of groups for each way to compare. */
export const groupsOf = (hulls: readonly Pick<RolledHull, 'built' | 'model'>[]): Choice[] => {
  const months = new Months();
  return CHOICES.map((strata) => {
    const sizes = new Map<string, number>();
    const groups = new Strata({ strata });
    for (const { model, built } of hulls) {
      const name = groups.of(model, months.of(built));
      sizes.set(name, (sizes.get(name) ?? 0) + 1);
    }
    const small = [...sizes.values()].filter((size) => size < SMALL_GROUP);
    return { strata, groups: sizes.size, hullsInSmall: small.reduce((a, b) => a + b, 0) };
  });
};
