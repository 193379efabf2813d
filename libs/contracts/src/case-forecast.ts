import { z } from 'zod';
import { Day } from './envelope.js';

const Limits = z.object({ lower: z.number(), upper: z.number() });

/** How many more first claims to expect, of the leading class and of all hulls. */
export const GroupForecast = z.object({
  group: z.string(),
  hulls: z.number(),
  withClaim: z.number(),
  curve: z
    .array(
      z.object({ days: z.number(), atRisk: z.number(), without: z.number(), lower: z.number(), upper: z.number() }),
    )
    .describe('Kaplan-Meier: share without a claim by age, 95 % band'),
  meanClaims: z
    .array(z.object({ days: z.number(), atRisk: z.number(), mean: z.number(), se: z.number() }))
    .describe('mean number of claims a hull by age; repeated claims count'),
  weibull: z
    .object({
      shape: z.number(),
      scaleDays: z.number(),
      aic: z.number(),
      limited: z.object({ share: z.number(), shape: z.number(), scaleDays: z.number(), aic: z.number() }).nullable(),
    })
    .nullable(),
  expected: z.number().nullable().describe('first claims within the time ahead; null: too few claims for one number'),
  interval: Limits.nullable().describe('90 %, with what is not known of the parameters'),
  plugIn: Limits.nullable().describe('as if the fit were the truth: too narrow, shown beside it'),
  range: z
    .object({ lower: z.number(), upper: z.number(), shapes: z.array(z.number()) })
    .nullable()
    .describe('fewer than three claims: a range over shapes, never one number'),
  byMonth: z.array(z.number()).describe('expected in each month ahead'),
  byMonthIntervals: z
    .array(Limits)
    .optional()
    .describe(
      '90 %, of each month by itself, with what is not known of the parameters; looks of earlier methods have none',
    ),
  medianRanks: z
    .object({ shape: z.number(), scaleDays: z.number() })
    .nullable()
    .optional()
    .describe(
      'the line through the median ranks, to be drawn and not relied on; null: too few claims, or hulls watched from later on',
    ),
  sentence: z.string(),
});
export type GroupForecast = z.output<typeof GroupForecast>;

export const CaseForecast = z
  .object({
    from: Day,
    monthsAhead: z.number(),
    warrantyCapDays: z.number().nullable().describe('no claim counts beyond this age; null: no terms say'),
    groups: z.array(GroupForecast),
    triangle: z.array(
      z.object({
        built: z.string().describe('month, YYYY-MM'),
        cells: z.array(z.object({ claims: z.number(), atRisk: z.number() })).describe('by months in service, from 0'),
      }),
    ),
    notLaunched: z
      .number()
      .describe(
        'hulls that came to their time origin after the day until which is watched: none of them is in these figures',
      ),
    cannotSay: z.string(),
  })
  .meta({ id: 'CaseForecast' });
export type CaseForecast = z.output<typeof CaseForecast>;
