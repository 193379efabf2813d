import { z } from 'zod';
import { WARRANTY_STARTS } from '@hull-record/trade';
import { Code, Day, Envelope, Instant, Text, receipt } from './envelope.js';

const years = z.number().int().min(1).max(50);
const modelYear = z.number().int().min(1900).max(2200);

export const WarrantyCover = z
  .object({
    kinds: z.array(Code).max(60).default([]).describe('kinds of defect; none: all that no other cover names'),
    years,
    bearsPercent: z
      .array(z.number().min(0).max(100))
      .max(50)
      .default([])
      .describe('what the builder bears in the first year, the second ...; none: all of it throughout'),
  })
  .refine((cover) => cover.bearsPercent.length <= cover.years, {
    path: ['bearsPercent'],
    message: 'has more years than the cover',
  });

/** Publishes warranty terms of a model, for model years from one to another. They never change: a later version follows. */
export const SetWarrantyTerms = Envelope.extend({
  fromModelYear: modelYear,
  toModelYear: modelYear,
  starts: z
    .array(z.enum(WARRANTY_STARTS))
    .min(1)
    .max(WARRANTY_STARTS.length)
    .describe('the first of these that the life of a boat has is the start'),
  covers: z.array(WarrantyCover).min(1).max(40),
  transfer: z.object({
    carries: z.boolean().describe('whether it goes on with another owner'),
    untilYears: years.optional().describe('and then until so many years from the start'),
  }),
  exclusions: z.array(Text).max(60).default([]).describe('shown to whoever decides; nobody computes them'),
  reason: Text,
})
  .refine((terms) => terms.fromModelYear <= terms.toModelYear, {
    path: ['toModelYear'],
    message: 'must not be before fromModelYear',
  })
  .refine((terms) => terms.covers.filter(({ kinds }) => kinds.length === 0).length <= 1, {
    path: ['covers'],
    message: 'have one cover at most that names no kind',
  })
  .meta({ id: 'SetWarrantyTerms' });
export type SetWarrantyTerms = z.output<typeof SetWarrantyTerms>;

export const WarrantyTermsReceipt = receipt('WarrantyTermsReceipt', z.object({ version: z.number() }));
export type WarrantyTermsReceipt = z.output<typeof WarrantyTermsReceipt>;

export const WarrantyTermsView = z
  .object({
    id: z.uuid(),
    version: z.number().describe('of this model; the newest that covers a model year holds for it'),
    fromModelYear: z.number(),
    toModelYear: z.number(),
    starts: z.array(z.enum(WARRANTY_STARTS)),
    covers: z.array(z.object({ kinds: z.array(z.string()), years: z.number(), bearsPercent: z.array(z.number()) })),
    transfer: z.object({ carries: z.boolean(), untilYears: z.number().nullable() }),
    exclusions: z.array(z.string()),
    reason: z.string(),
    from: Instant.describe('hold for warranties that began then or later; the first version for those before, too'),
  })
  .meta({ id: 'WarrantyTermsView' });
export type WarrantyTermsView = z.output<typeof WarrantyTermsView>;

/** What the terms say of a claim: data for the person who decides. */
export const ClaimTerm = z
  .object({
    within: z.boolean().nullable().describe('null: what is on record cannot say'),
    startsOn: Day.nullable(),
    startsWith: z.string().nullable(),
    endsOn: Day.nullable(),
    year: z.number().nullable().describe('year of the warranty'),
    bearsPercent: z.number().nullable().describe('what the builder bears by the terms'),
    terms: z.object({ id: z.uuid(), version: z.number() }).nullable(),
    modelYear: z.number().nullable(),
    exclusions: z.array(z.string()),
    says: z.array(z.string()),
  })
  .meta({ id: 'ClaimTerm' });
export type ClaimTerm = z.output<typeof ClaimTerm>;
