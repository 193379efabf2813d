import type { AheadView, GroupView, Said } from '@hull-record/paper';
import type { CaseForecast } from '@hull-record/contracts';
import { count, decimal } from '../../word-values.js';
import type { CostRow } from './load-inquiry.js';
import { hulls, share } from './word-figures.js';

const MONTH_DAYS = 365.25 / 12;
/** Ages that the curves are told at in words, months. */
const AGES = [3, 6, 12, 24, 36, 60, 84, 120] as const;
/** Normal quantile of a two-sided band of 95 %. */
const Z = 1.96;

type Group = CaseForecast['groups'][number];

/** What is known by age, and how many more first claims to expect, with what they may cost. */
export const wordAhead = (forecast: CaseForecast, costs: readonly CostRow[]): AheadView => ({
  says: [
    ['From', `${forecast.from}, ${forecast.monthsAhead} months ahead`],
    [
      'Warranty',
      forecast.warrantyCapDays === null
        ? 'no terms say until when claims count: none is left out for its age'
        : `no claim counts beyond an age of ${forecast.warrantyCapDays} days`,
    ],
    ['Not there yet', `${hulls(forecast.notLaunched)} that came to their time origin later: in none of these figures`],
    ...costs.map(({ currency, claims, mean }): Said => ['Cost', costOf(forecast, { currency, claims, mean })]),
    ...(costs.length === 0 ? [['Cost', 'of no decided claim of this kind a cost is on record'] as const] : []),
  ],
  groups: forecast.groups.map(wordGroup),
  months: forecast.groups.every(({ byMonth }) => byMonth.length === 0)
    ? []
    : Array.from({ length: forecast.monthsAhead }, (_, i) => ({
        month: monthAfter(forecast.from, i),
        expected: forecast.groups.map(({ byMonth }) => byMonth[i] ?? null),
        limits: forecast.groups.map(({ byMonthIntervals = [] }) => byMonthIntervals[i] ?? null),
      })),
  cannotSay: forecast.cannotSay,
});

/** Expected claims times the mean cost on record: said to be no part of the answer, whose hash does not hold it. */
const costOf = ({ groups }: CaseForecast, { currency, claims, mean }: CostRow): string => {
  const [all] = groups;
  const known = `${decimal(mean, 2)} ${currency} on the mean of ${count(claims, 'decided claim')} of this kind, as on record now and no part of the answer`;
  if (all === undefined || all.expected === null || all.interval === null) return known;
  const { expected, interval } = all;
  const money = (times: number): string => String(Number((times * mean).toPrecision(3)));
  return `${known}; times ${decimal(expected, 1)} expected: ${money(expected)} ${currency}, ${money(interval.lower)} to ${money(interval.upper)} by the 90 % interval of their number alone`;
};

/** Months of the forecast begin on the day it runs from. */
const monthAfter = (from: string, months: number): string => {
  const start = new Date(`${from}T00:00:00Z`);
  const month = new Date(Date.UTC(start.getUTCFullYear(), start.getUTCMonth() + months, 1));
  return `${months + 1}: ${month.toISOString().slice(0, 7)}`;
};

const wordGroup = (group: Group): GroupView => ({
  ...{ group: group.group, sentence: group.sentence, curve: group.curve.map(stepOf) },
  says: [
    ...(group.interval === null
      ? []
      : [['90 % interval', `${limits(group.interval)}, with what is not known of the parameters`] as const]),
    ...(group.plugIn === null
      ? []
      : [['Plug-in', `${limits(group.plugIn)}, as if the fit were the truth: too narrow`] as const]),
    ...(group.range === null
      ? []
      : [['Range', `${limits(group.range)}, over Weibull shapes ${group.range.shapes.join(', ')}`] as const]),
    ...weibullOf(group),
    ...(group.medianRanks
      ? [
          [
            'Median ranks',
            `line through them, for comparison alone: shape ${decimal(group.medianRanks.shape, 2)}, scale ${decimal(group.medianRanks.scaleDays, 0)} days`,
          ] as const,
        ]
      : []),
  ],
  mean: group.meanClaims.map(({ days, mean, se }) => ({
    ...{ days, mean, lower: Math.max(0, mean - Z * se), upper: mean + Z * se },
  })),
  ages: agesOf(group),
});

const stepOf = ({ days, without, lower, upper }: Group['curve'][number]): GroupView['curve'][number] => ({
  ...{ days, without, lower: finite(lower), upper: finite(upper) },
});

/** What JSON could not hold came back as null. */
const finite = (value: number | null): number | null => (value !== null && Number.isFinite(value) ? value : null);

const limits = ({ lower, upper }: { readonly lower: number; readonly upper: number }): string =>
  `${decimal(lower, 1)} to ${decimal(upper, 1)} first claims`;

const weibullOf = ({ weibull }: Group): readonly Said[] => {
  if (weibull === null) return [];
  const { shape, scaleDays, aic, limited } = weibull;
  const fit: Said = [
    'Weibull',
    `shape ${decimal(shape, 2)}, scale ${decimal(scaleDays, 0)} days, AIC ${decimal(aic, 1)}`,
  ];
  if (limited === null) return [fit];
  const better = limited.aic < aic ? 'fits better' : 'fits no better';
  return [
    fit,
    [
      'A part alone',
      `${share(limited.share)} carry the flaw: shape ${decimal(limited.shape, 2)}, scale ${decimal(limited.scaleDays, 0)} days, AIC ${decimal(limited.aic, 1)}; ${better}`,
    ],
  ];
};

/** The curves in words, at ages that the hulls have come to. */
const agesOf = ({ curve, meanClaims }: Group): GroupView['ages'] => {
  const last = Math.max(0, ...[...curve, ...meanClaims].map(({ days }) => days));
  return AGES.filter((months, i) => months * MONTH_DAYS <= last || (AGES[i - 1] ?? 0) * MONTH_DAYS < last).map(
    (months) => {
      const at = <Step extends { readonly days: number }>(steps: readonly Step[]): Step | undefined =>
        steps.filter(({ days }) => days <= months * MONTH_DAYS).at(-1);
      const [step, mean] = [at(curve), at(meanClaims)];
      return {
        age: `${months} months`,
        atRisk: step === undefined ? 'no claim until then' : `${step.atRisk} at the last claim until then`,
        without: step === undefined ? '100 %' : `${share(step.without)}${bandOf(step)}`,
        mean:
          mean === undefined
            ? '0'
            : `${decimal(mean.mean, 3)} (${decimal(Math.max(0, mean.mean - Z * mean.se), 3)} to ${decimal(mean.mean + Z * mean.se, 3)})`,
      };
    },
  );
};

const bandOf = ({ lower, upper }: Group['curve'][number]): string =>
  finite(lower) === null || finite(upper) === null ? '' : ` (${share(lower)} to ${share(upper)})`;
