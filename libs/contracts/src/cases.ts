import { z } from 'zod';
import { Code, Day, Envelope, Instant, NewCode, PageQuery, Text, page, receipt } from './envelope.js';
import { CaseAnswer } from './case-answer.js';

/** Where the age of every hull of a case begins. Only days that hulls without a claim have, too. */
export const CASE_ORIGINS = [
  'left the place of manufacture',
  'at dealer',
  'sold to first purchaser',
  'warranty registered',
] as const;

/** What hulls are compared within. */
export const CASE_STRATA = ['build quarter', 'model'] as const;

/** Opens a case: an inquiry into what claimed hulls have in common. */
export const OpenCase = Envelope.extend({
  code: NewCode,
  title: Text,
  underCounsel: z
    .boolean()
    .default(false)
    .describe('prepared at the direction of counsel: only whoever opened it and the readers named see it'),
  readers: z.array(Code).max(60).default([]).describe('badges of those who may see it, when it is for counsel'),
})
  .refine((opened) => opened.underCounsel || opened.readers.length === 0, {
    path: ['readers'],
    message: 'are for a case under counsel alone: everybody at the desk sees the others',
  })
  .meta({ id: 'OpenCase' });
export type OpenCase = z.output<typeof OpenCase>;
export const CaseReceipt = receipt('CaseReceipt', z.object({ code: z.string() }));
export type CaseReceipt = z.output<typeof CaseReceipt>;

/** Freezes how a case is judged. Frozen settings never change; others are frozen as the next version. */
export const FreezeCase = Envelope.extend({
  kind: Code.describe('kind of claim: see GET /api/defect-kinds'),
  models: z.array(Code).max(60).default([]).describe('none: all models'),
  builtFrom: Day.optional(),
  builtTo: Day.optional(),
  origin: z.enum(CASE_ORIGINS).default('left the place of manufacture'),
  cutOff: Day.optional().describe(
    'default: the day before the first hold that reached hulls of the case which had left, or before the first letter to one; else the day it is frozen. Where claims recorded after the freeze alone count, it must be later than it; default then: each look until its own day. No look goes further than its own day',
  ),
  reportLagDays: z
    .number()
    .int()
    .min(0)
    .max(730)
    .default(30)
    .describe('what came to light later may not be reported yet'),
  strata: z
    .array(z.enum(CASE_STRATA))
    .max(2)
    .default([...CASE_STRATA]),
  exposureShare: z
    .number()
    .min(0)
    .max(1)
    .default(0.05)
    .describe('share of like material in a layer from which on a hull counts as exposed'),
  claims: z
    .enum(['all', 'recorded after this freeze'])
    .default('all')
    .describe(
      'only claims recorded after the settings can test them: then hulls are at risk from the day after the freeze on, and a claim that was noticed until it does not count',
    ),
  seed: z.number().int().min(0).max(4_294_967_295).default(1),
  worlds: z.number().int().min(99).max(19_999).default(1_999),
  reason: Text,
})
  .refine((frozen) => !frozen.builtFrom || !frozen.builtTo || frozen.builtFrom <= frozen.builtTo, {
    path: ['builtTo'],
    message: 'must not be before builtFrom',
  })
  .meta({ id: 'FreezeCase' });
export type FreezeCase = z.output<typeof FreezeCase>;

/** Which hulls a case would be about. */
export const ReadGroupsQuery = z.object({
  models: z.string().max(2_400).optional().describe('codes, separated by commas; none: all models'),
  builtFrom: Day.optional(),
  builtTo: Day.optional(),
  origin: z.enum(CASE_ORIGINS).default('left the place of manufacture'),
});
export type ReadGroupsQuery = z.output<typeof ReadGroupsQuery>;

export const CaseGroups = z
  .object({
    hulls: z.number().describe('that have the day on which age begins'),
    smallBelow: z.number().describe('a group of fewer hulls says little'),
    choices: z.array(
      z.object({
        strata: z.array(z.enum(CASE_STRATA)),
        groups: z.number(),
        hullsInSmall: z.number().describe('hulls in groups of fewer than `smallBelow`'),
      }),
    ),
  })
  .meta({ id: 'CaseGroups' });
export type CaseGroups = z.output<typeof CaseGroups>;

export const FrozenSettings = z
  .object({
    version: z.number(),
    sha256: z.string().describe('of the canonical JSON (RFC 8785) of `settings`'),
    settings: z.record(z.string(), z.unknown()).describe('all that the verdict hangs on, with seed and method'),
    reason: z.string(),
    by: z.string(),
    frozenAt: Instant,
  })
  .meta({ id: 'FrozenSettings' });
export type FrozenSettings = z.output<typeof FrozenSettings>;
export const FreezeReceipt = receipt(
  'FreezeReceipt',
  z.object({ version: z.number(), sha256: z.string(), cutOff: Day, cutOffBecause: z.string() }),
);
export type FreezeReceipt = z.output<typeof FreezeReceipt>;

/** Looks at a case by frozen settings. Every look is kept and counted: who looks often finds something by chance. */
export const LookAtCase = Envelope.extend({
  version: z.number().int().positive().optional().describe('of the settings; default: the newest'),
}).meta({ id: 'LookAtCase' });
export type LookAtCase = z.output<typeof LookAtCase>;
export const LookReceipt = receipt('LookReceipt', z.object({ look: z.number(), version: z.number() }));
export type LookReceipt = z.output<typeof LookReceipt>;

const Progress = z.object({
  state: z.enum(['waiting', 'running', 'done', 'failed']),
  step: z.string().nullable(),
  done: z.number(),
  total: z.number(),
  trouble: z.string().nullable(),
});

export const LookSummary = z
  .object({
    look: z.number().describe('1 for the first look at the case'),
    version: z.number(),
    askedAt: Instant,
    by: z.string(),
    progress: Progress,
    verdict: z.string().nullable(),
    exploratory: z.boolean().nullable(),
  })
  .meta({ id: 'LookSummary' });
export type LookSummary = z.output<typeof LookSummary>;

export const CaseSummary = z.object({
  id: z.uuid(),
  code: z.string(),
  title: z.string(),
  underCounsel: z.boolean(),
  openedAt: Instant,
  by: z.string(),
  looks: z.number(),
  verdict: z.string().nullable().describe('of the newest look that is done'),
  exploratory: z.boolean().nullable(),
});
export type CaseSummary = z.output<typeof CaseSummary>;
export const CasePage = page('CasePage', CaseSummary.meta({ id: 'CaseSummary' }));
export type CasePage = z.output<typeof CasePage>;
export const ListCasesQuery = PageQuery;

export const CaseView = CaseSummary.extend({
  readers: z.array(z.string()),
  settings: z.array(FrozenSettings).describe('the newest first'),
  history: z.array(LookSummary).describe('every look, the newest first'),
}).meta({ id: 'CaseView' });
export type CaseView = z.output<typeof CaseView>;

export const LookView = LookSummary.extend({
  case: z.string(),
  frozen: FrozenSettings,
  inputsSha256: z.string().nullable().describe('of the inputs as they were; they are kept'),
  answerSha256: z.string().nullable().describe('of the canonical JSON of the answer'),
  answer: CaseAnswer.nullable(),
}).meta({ id: 'LookView' });
export type LookView = z.output<typeof LookView>;

/** Whether the verdict comes out again, to the digit, from the inputs that were kept. */
export const LookAgain = z
  .object({
    same: z.boolean(),
    method: z.string(),
    inputsSha256: z.string(),
    answerSha256: z.string(),
    says: z.string(),
  })
  .meta({ id: 'LookAgain' });
export type LookAgain = z.output<typeof LookAgain>;
