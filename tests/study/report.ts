import type { Comparison, Rate, Summary } from './summary.js';
import { SCENARIOS } from './scenarios.js';

/** Everything a run came to. */
export interface Report {
  readonly seed: number;
  /** Plants of each scenario without a bad lot, and with one. */
  readonly plants: { readonly withoutBad: number; readonly withBad: number };
  readonly settings: object;
  readonly size: object;
  readonly summaries: readonly Summary[];
  readonly pooled: Comparison;
  readonly holds: Readonly<Record<string, boolean>>;
}

/** What the study states beforehand, and the rates it is held to. */
export const STATED = { standsOut: 0.1, strong: 0.01, margin: 0.03, better: 0.05 };

/** Whether each statement was shown. */
export const holdsOf = (summaries: readonly Summary[], all: Comparison): Report['holds'] => {
  const innocent = summaries.filter(({ badLots }) => badLots === 0);
  const better = summaries.filter(({ scenario }) =>
    SCENARIOS.some(({ name, compared }) => name === scenario && compared === 'better'),
  );
  return {
    'false alarms below 10 %': innocent.every(({ standsOut }) => standsOut.upper < STATED.standsOut),
    'false "strong" below 1 %': innocent.every(({ strong }) => strong.upper < STATED.strong),
    'not inferior by 3 points': all.limits.lower > -STATED.margin,
    'better where age mixes with lots': better.every(
      ({ comparison }) => comparison !== null && comparison.difference > 0 && comparison.mcNemar < STATED.better,
    ),
  };
};

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const points = (share: number): string => `${share < 0 ? '' : '+'}${(100 * share).toFixed(1)}`;
const withBound = ({ count, of, upper }: Rate): string =>
  `${count} of ${of} (${percent(count / of)}), at most ${percent(upper)}`;
const share = ({ count, of }: Rate): string => (of === 0 ? 'none' : `${count} of ${of} (${percent(count / of)})`);

/** The run as tables, for people. */
export const tables = ({ summaries, pooled, holds }: Report): string => {
  const innocent = summaries.filter(({ badLots }) => badLots === 0);
  const planted = summaries.filter(({ badLots }) => badLots > 0);
  return [
    '| without a bad lot | another verdict than "no lot stands out" | called "strong" | least p by shuffles at most 0.05 |',
    '| --- | --- | --- | --- |',
    ...innocent.map(
      (own) =>
        `| ${own.scenario} | ${withBound(own.standsOut)} | ${withBound(own.strong)} | ${share(own.adjustedBelow5)} |`,
    ),
    '',
    '| with a bad lot | bad lot first | crude ranking | difference, points (95 %) | only ours, only crude | McNemar p |',
    '| --- | --- | --- | --- | --- | --- |',
    ...planted.map(
      (own) => `| ${own.scenario} | ${share(own.first)} | ${share(own.crudeFirst)} | ${compared(own.comparison)} |`,
    ),
    `| all but the last together |  |  | ${compared(pooled)} |`,
    '',
    '| verdicts | strong | suggestive | the data cannot say which | no lot stands out | what is named holds a bad lot |',
    '| --- | --- | --- | --- | --- | --- |',
    ...summaries.map((own) => {
      const of = (verdict: string): number => own.verdicts[verdict] ?? 0;
      const words = ['strong', 'suggestive', 'the data cannot say which', 'no lot stands out'].map(of).join(' | ');
      return `| ${own.scenario} | ${words} | ${own.badLots === 0 ? 'there is none' : share(own.namedBad)} |`;
    }),
    '',
    ...Object.entries(holds).map(([what, held]) => `- ${what}: ${held ? 'shown' : '**not shown**'}`),
  ].join('\n');
};

const compared = (own: Comparison | null): string =>
  own === null
    ? ' |  | '
    : `${points(own.difference)} (${points(own.limits.lower)} to ${points(own.limits.upper)}) | ${own.onlyFirst}, ${own.onlySecond} | ${own.mcNemar.toPrecision(2)}`;
