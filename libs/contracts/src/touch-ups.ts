import { z } from 'zod';
import { AmountView, Taken } from './amount.js';
import { Code, Envelope, Instant, Nonconformity, Text, receipt } from './envelope.js';

/** Spots of one kind in one zone. */
export const TouchedSpots = z
  .object({
    zone: Text.describe('zone of the part, such as port topside'),
    kind: Code.describe('kind of defect'),
    count: z.number().int().min(1).max(1_000),
    largestMm: z.number().positive().max(2_000).optional(),
  })
  .meta({ id: 'TouchedSpots' });
export type TouchedSpots = z.output<typeof TouchedSpots>;

/** Many small cosmetic spots in one entry. What is over the plant's limit is a repair. */
export const RecordTouchUp = Envelope.extend({
  spots: z.array(TouchedSpots).min(1).max(100),
  doneBy: z.array(Code).min(1).max(40),
  used: z.array(Taken).max(40).default([]).describe('patch gel coat'),
  note: Text.optional(),
}).meta({ id: 'RecordTouchUp' });
export type RecordTouchUp = z.output<typeof RecordTouchUp>;
export const TouchUpReceipt = receipt(
  'TouchUpReceipt',
  z.object({
    mark: z.string(),
    kg: z.number(),
    nonconformities: z.array(Nonconformity),
    warnings: z.array(z.string()),
  }),
);
export type TouchUpReceipt = z.output<typeof TouchUpReceipt>;

export const SetTouchUpLimit = Envelope.extend({
  spotsInAZone: z.number().int().min(0).max(10_000),
  spotsOnAPart: z.number().int().min(0).max(10_000),
  largestMm: z.number().positive().max(2_000),
  source: Text.describe('where the limit comes from'),
}).meta({ id: 'SetTouchUpLimit' });
export type SetTouchUpLimit = z.output<typeof SetTouchUpLimit>;
export const TouchUpLimitReceipt = receipt('TouchUpLimitReceipt', z.object({ spotsInAZone: z.number() }));
export type TouchUpLimitReceipt = z.output<typeof TouchUpLimitReceipt>;

export const TouchUpView = z
  .object({
    id: z.uuid(),
    mark: z.string(),
    spots: z.array(TouchedSpots),
    doneBy: z.array(z.string()),
    used: z.array(z.object({ id: z.uuid(), lot: z.string(), lotId: z.uuid(), amount: AmountView })),
    note: z.string().nullable(),
    acceptance: z
      .object({ accepted: z.boolean(), by: z.string(), at: Instant, note: z.string().nullable() })
      .nullable(),
    happenedAt: Instant,
  })
  .meta({ id: 'TouchUpView' });
export type TouchUpView = z.output<typeof TouchUpView>;

/** The one who enters this looked at the repair again; it must be someone who did not do it. */
export const InspectRepairAgain = Envelope.extend({ passed: z.boolean(), note: Text.optional() })
  .refine((inspection) => inspection.passed || inspection.note !== undefined, {
    path: ['note'],
    message: 'say what is wrong',
  })
  .meta({ id: 'InspectRepairAgain' });
export type InspectRepairAgain = z.output<typeof InspectRepairAgain>;
export const ReInspectionReceipt = receipt('ReInspectionReceipt', z.object({ passed: z.boolean() }));
export type ReInspectionReceipt = z.output<typeof ReInspectionReceipt>;

/** Of which bucket or gun a catalyst slug or undercure came; or, in words, why neither can be named. */
export const AnswerAsk = Envelope.extend({ lot: Code.optional(), gun: Code.optional(), note: Text.optional() })
  .refine(({ lot, gun, note }) => lot !== undefined || gun !== undefined || note !== undefined, {
    path: ['lot'],
    message: 'name the bucket or the gun, or say why neither can be named',
  })
  .meta({ id: 'AnswerAsk' });
export type AnswerAsk = z.output<typeof AnswerAsk>;
export const AnswerReceipt = receipt('AnswerReceipt', z.object({ bucketOrGun: z.string() }));
export type AnswerReceipt = z.output<typeof AnswerReceipt>;

export const ScrapPart = Envelope.extend({ reason: Text }).meta({ id: 'ScrapPart' });
export type ScrapPart = z.output<typeof ScrapPart>;
export const ScrapReceipt = receipt('ScrapReceipt', z.object({ number: z.string() }));
export type ScrapReceipt = z.output<typeof ScrapReceipt>;
