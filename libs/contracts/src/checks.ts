import { z } from 'zod';
import { Code, Envelope, Instant, PageQuery, Text, page, receipt } from './envelope.js';

/** What would be found wrong with an act that was not done yet: nothing is recorded. */
export const Stops = z
  .object({
    stops: z.array(
      z.object({
        rule: z.string(),
        detail: z.string(),
        remedy: z.string(),
        goesOn: z.enum(['shift lead', 'nobody']).describe('who may go on over it, under nonconformance'),
      }),
    ),
    warnings: z.array(z.string()),
  })
  .meta({ id: 'Stops' });
export type Stops = z.output<typeof Stops>;

/** A shift lead goes on although rules stop it; quality disposes before release. Never over a safety hold. */
export const GoOn = Envelope.extend({
  part: Code.optional(),
  layer: Code.optional().describe('layer of the part that is made all the same'),
  lot: Code.optional().describe('code of the bucket or kit that is made all the same'),
  rules: z.array(Code).min(1).max(20).describe('the rules gone on over, as the check names them'),
  reason: Text,
})
  .refine((word) => (word.part === undefined) === (word.layer === undefined), {
    path: ['layer'],
    message: 'a part and its layer go together',
  })
  .refine((word) => (word.part === undefined) !== (word.lot === undefined), {
    path: ['lot'],
    message: 'name either a part with its layer, or the lot that is made',
  })
  .meta({ id: 'GoOn' });
export type GoOn = z.output<typeof GoOn>;
export const GoOnReceipt = receipt('GoOnReceipt', z.object({ rules: z.array(z.string()) }));
export type GoOnReceipt = z.output<typeof GoOnReceipt>;

export const WentOn = z.object({ by: z.string(), reason: z.string(), at: Instant }).meta({ id: 'WentOn' });

/** Says that the rework or repair of a disposition was done; whoever enters this inspected it, and did not do it. */
export const RecordRework = Envelope.extend({ doneBy: z.array(Code).min(1).max(40), note: Text }).meta({
  id: 'RecordRework',
});
export type RecordRework = z.output<typeof RecordRework>;
export const ReworkReceipt = receipt('ReworkReceipt', z.object({ done: z.literal(true) }));
export type ReworkReceipt = z.output<typeof ReworkReceipt>;

export const NonconformitiesQuery = PageQuery.extend({
  open: z.enum(['yes', 'no']).optional(),
  rule: Code.optional(),
  hull: Code.optional().describe('hull number'),
  part: Code.optional(),
});
export type NonconformitiesQuery = z.output<typeof NonconformitiesQuery>;

/** Something done against a rule, kept as it was done. */
export const NonconformityView = z
  .object({
    id: z.uuid(),
    rule: z.string(),
    detail: z.string(),
    aboutKind: z.string(),
    about: z.uuid(),
    part: z.string().nullable(),
    hull: z.string().nullable(),
    happenedAt: Instant,
    disposition: z.string().nullable(),
    dispositionId: z.uuid().nullable(),
    concession: z.string().nullable(),
    open: z.boolean(),
    goOn: WentOn.nullable(),
  })
  .meta({ id: 'NonconformityView' });
export type NonconformityView = z.output<typeof NonconformityView>;
export const NonconformityPage = page('NonconformityPage', NonconformityView);
export type NonconformityPage = z.output<typeof NonconformityPage>;
