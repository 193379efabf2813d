import { binomialLimits, type Limits } from '@hull-record/statistics';
import type { Outcome } from './judge-plant.js';
import { differenceLimits, mcNemar, type Pairs } from './paired.js';
import { SCENARIOS, type Scenario } from './scenarios.js';

/** A count with its exact 95 % interval (Clopper and Pearson 1934). */
export interface Rate extends Limits {
  readonly count: number;
  readonly of: number;
}

/** Two rankings of the same plants. */
export interface Comparison extends Pairs {
  readonly difference: number;
  readonly limits: Limits;
  readonly mcNemar: number;
}

/** What came of the plants of a scenario. */
export interface Summary {
  readonly scenario: string;
  readonly badLots: number;
  readonly verdicts: Readonly<Record<string, number>>;
  readonly standsOut: Rate;
  readonly strong: Rate;
  /** Least corrected p by shuffles at most 0.05. */
  readonly adjustedBelow5: Rate;
  readonly first: Rate;
  readonly crudeFirst: Rate;
  readonly comparison: Comparison | null;
  /** Of the plants in which a class was named: it held a planted lot. */
  readonly namedBad: Rate;
  readonly bothInFirstTwo: number;
  readonly moldFirst: Rate | null;
}

const rate = (count: number, of: number): Rate => ({
  ...{ count, of },
  ...(of === 0 ? { lower: 0, upper: 1 } : binomialLimits(count, of)),
});

const counted = <T>(all: readonly T[], is: (each: T) => boolean): number => all.filter(is).length;

/** Counts the outcomes of a scenario. */
export const summarise = (scenario: Scenario, outcomes: readonly Outcome[]): Summary => {
  const n = outcomes.length;
  const named = outcomes.filter(({ namedBad }) => namedBad !== null);
  const molds = outcomes.filter(({ moldFirst }) => moldFirst !== null);
  return {
    ...{ scenario: scenario.name, badLots: scenario.badLots, verdicts: verdictsOf(outcomes) },
    standsOut: rate(
      counted(outcomes, ({ verdict }) => verdict !== 'no lot stands out'),
      n,
    ),
    strong: rate(
      counted(outcomes, ({ strong }) => strong),
      n,
    ),
    adjustedBelow5: rate(
      counted(outcomes, ({ adjusted }) => adjusted <= 0.05),
      n,
    ),
    first: rate(
      counted(outcomes, ({ first }) => first),
      n,
    ),
    crudeFirst: rate(
      counted(outcomes, ({ crudeFirst }) => crudeFirst),
      n,
    ),
    comparison: scenario.badLots === 0 || n === 0 ? null : comparisonOf(pairsOf(outcomes)),
    namedBad: rate(
      counted(named, ({ namedBad }) => namedBad === true),
      named.length,
    ),
    bothInFirstTwo: counted(outcomes, ({ inFirstTwo }) => inFirstTwo === 2),
    moldFirst:
      molds.length === 0
        ? null
        : rate(
            counted(molds, ({ moldFirst }) => moldFirst === true),
            molds.length,
          ),
  };
};

const verdictsOf = (outcomes: readonly Outcome[]): Record<string, number> => {
  const found: Record<string, number> = {};
  for (const { verdict } of outcomes) found[verdict] = (found[verdict] ?? 0) + 1;
  return found;
};

const pairsOf = (outcomes: readonly Outcome[]): Pairs => ({
  onlyFirst: counted(outcomes, ({ first, crudeFirst }) => first && !crudeFirst),
  onlySecond: counted(outcomes, ({ first, crudeFirst }) => !first && crudeFirst),
  all: outcomes.length,
});

const comparisonOf = (pairs: Pairs): Comparison => ({
  ...pairs,
  difference: (pairs.onlyFirst - pairs.onlySecond) / pairs.all,
  limits: differenceLimits(pairs),
  mcNemar: mcNemar(pairs),
});

/** The comparison over all plants in which it is not to be inferior. */
export const pooled = (summaries: readonly Summary[]): Comparison => {
  const own = summaries.flatMap(({ scenario, comparison }) =>
    comparison && SCENARIOS.find(({ name }) => name === scenario)?.compared === 'not inferior' ? [comparison] : [],
  );
  const total = (of: (pairs: Pairs) => number): number => own.reduce((all, pairs) => all + of(pairs), 0);
  return comparisonOf({
    onlyFirst: total(({ onlyFirst }) => onlyFirst),
    onlySecond: total(({ onlySecond }) => onlySecond),
    all: total(({ all }) => all),
  });
};
