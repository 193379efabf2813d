import type { ClassView, CoverView, RowView, UntestableView } from '@hull-record/paper';
import type { CaseAnswer, CaseClass, OtherExposure } from '@hull-record/contracts';
import { decimal } from '../../word-values.js';
import { chance, hulls, ratio, share } from './word-figures.js';

/** The figures of a class or of another exposure. */
export const wordRow = (row: CaseClass | OtherExposure, family: string): Omit<RowView, 'standing'> => {
  const { exposedWithClaim, exposedWithout, othersWithClaim, othersWithout } = row.crude.table;
  return {
    ...{ named: row.named, family, p: `p ${chance(row.p)}`, q: `q ${chance(row.q)}` },
    observed: `${row.observed} of ${hulls(row.hulls)}`,
    expected: `${decimal(row.expected, 2)} expected, ${decimal(row.hullYears, 1)} hull-years`,
    ratio: row.ratio,
    ratioText: row.ratio.ratio === null ? 'not told' : ratio(row.ratio.ratio),
    limits: `${ratio(row.ratio.lower ?? 0)} to ${ratio(row.ratio.upper)}`,
    odds: wordOdds(row.hazardOdds),
    crude: {
      exposed: `${exposedWithClaim} / ${exposedWithout}`,
      others: `${othersWithClaim} / ${othersWithout}`,
      p: chance(row.crude.p),
      differs: row.mixedWithAge ? 'age or build period mixes with it: this one holds' : null,
    },
  };
};

/** Odds of a claim, at each age, of exposed hulls against the others: words are given by the lower limit. */
const wordOdds = ({ ratio: middle, lower, upper }: CaseClass['hazardOdds']): string =>
  middle === null || upper === null
    ? `hazard odds at least ${ratio(lower ?? 0)}`
    : `hazard odds ${ratio(middle)}, ${ratio(lower ?? 0)} to ${ratio(upper)}`;

/** Classes of lots: those in the same hulls are one, under the names of all. */
export const wordClass = (row: CaseClass): ClassView => ({
  ...wordRow(row, row.lots.length > 1 ? `${row.lots.length} lots, one class` : (row.members[0]?.family ?? '')),
  standing: row.strength,
  members: row.members.map(({ lot, supplierLot, material, family }) => ({
    ...{ lot, family, material: material ?? 'not told apart' },
    supplierLot: supplierLot === null ? 'no supplier’s lot' : `supplier’s lot ${supplierLot}`,
  })),
  together: row.lots.length > 1 ? 'One suspect: the data cannot say which lot.' : null,
  nearly:
    row.nearlySame.length === 0 ? null : `In nearly the same hulls, hardly told apart: ${row.nearlySame.join(', ')}`,
  adjusted:
    row.adjustedP === null ? 'no leader: not gone through by chance' : `p by permutation ${chance(row.adjustedP)}`,
  posterior:
    row.posterior === null
      ? 'posterior: not weighed'
      : `posterior ${likely(row.posterior.least)} to ${likely(row.posterior.most)}, typically ${likely(row.posterior.typical)}`,
  dose:
    row.dose === null
      ? 'no trend can be told: shares do not vary, or no claim stands between them'
      : `trend z ${decimal(row.dose.z, 2)}, p ${chance(row.dose.p)}`,
  shares:
    row.shares === null
      ? 'not told'
      : `${share(row.shares.least)} to ${share(row.shares.most)}, median ${share(row.shares.median)}`,
  atShares: row.atShares.map(({ fromShare, hulls: all, withClaim }) => ({
    ...{ from: share(fromShare), says: `${withClaim} of ${all}` },
  })),
});

/** A posterior: what is all but certain is not called certain. */
const likely = (value: number): string => {
  if (value > 0.9995) return 'over 0.999';
  return value < 0.0005 ? 'under 0.001' : decimal(value, 3);
};

/** What else hulls have in common; it has no word of its own. */
export const wordOther = (row: OtherExposure): RowView => ({ ...wordRow(row, row.family), standing: 'none' });

/** Classes without contrast, or in too few hulls. */
export const wordUntestable = ({ count, classes }: CaseAnswer['untestable']): UntestableView => ({
  says:
    count === 0
      ? 'Every class could be judged.'
      : `${count} classes are in nearly all hulls of their strata, or in too few: whatever the claims, no p of theirs could be small. ` +
        `They do not count among the tests, and nothing is said for or against them.${count > classes.length ? ` The ${classes.length} in most claimed hulls:` : ''}`,
  rows: classes.map(({ named, hulls: all, observed, smallestP }) => ({
    ...{ named, hulls: String(all), observed: String(observed), p: chance(smallestP) },
  })),
});

/** The greedy cover: an explanation to look at, no proof. */
export const wordCover = ({ steps, unexplained }: CaseAnswer['cover']): CoverView => ({
  steps: steps.map(({ named, explains, runnerUp, tie }) => ({
    ...{ named, explains: String(explains) },
    runnerUp: runnerUp === null ? 'none' : `${runnerUp}${tie ? ', within one claim of it: a tie' : ''}`,
  })),
  unexplained: `${
    unexplained.length === 0
      ? 'Every claim goes with a class.'
      : `Claims that go with none of them: ${unexplained.slice(0, 40).join(', ')}${unexplained.length > 40 ? ` and ${unexplained.length - 40} more` : ''}.`
  } An explanation to look at, not a proof: a claim that goes with a lot may have come without it.`,
});
