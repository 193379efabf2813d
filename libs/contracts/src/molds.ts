import { z } from 'zod';
import { Taken } from './amount.js';
import { Code, Day, Envelope, Instant, Nonconformity, Text, receipt } from './envelope.js';
import { Climate, Makers } from './parts.js';

/** Care of a mold. A rework (sanded back, sprayed anew) begins a new state of the mold. */
export const CareForMold = Envelope.extend({
  what: z.enum(['cleaned', 'sealed', 'waxed', 'release applied', 'sanded', 'buffed', 'inspected', 'reworked']),
  doneBy: Makers,
  used: z.array(Taken).max(40).default([]).describe('release, cleaner, compound'),
  duePulls: z.number().int().min(1).max(10_000).optional().describe('the like is due again after so many pulls'),
  dueOn: Day.optional().describe('the like is due again by this day'),
  note: Text.optional(),
}).meta({ id: 'CareForMold' });
export type CareForMold = z.output<typeof CareForMold>;
export const MoldCareReceipt = receipt(
  'MoldCareReceipt',
  z.object({
    what: z.string(),
    kg: z.number(),
    nonconformities: z.array(Nonconformity),
    warnings: z.array(z.string()),
  }),
);
export type MoldCareReceipt = z.output<typeof MoldCareReceipt>;

export const MoldDetail = z
  .object({
    id: z.uuid(),
    code: z.string(),
    model: z.string(),
    partKind: z.string(),
    state: z.number().describe('1, and one more for each rework'),
    overdue: z.array(z.string()),
    pulls: z.number(),
    pullsOfState: z.number().describe('pulls since the last rework'),
    care: z.array(
      z.object({
        id: z.uuid(),
        what: z.string(),
        doneBy: z.array(z.string()),
        duePulls: z.number().nullable(),
        dueOn: Day.nullable(),
        note: z.string().nullable(),
        happenedAt: Instant,
        lots: z.array(z.string()),
      }),
    ),
    parts: z.array(z.object({ part: z.string(), state: z.number(), startedAt: Instant })),
  })
  .meta({ id: 'MoldDetail' });
export type MoldDetail = z.output<typeof MoldDetail>;

/** A mold treated with a lot, and the parts molded on that surface until it was treated alike again. */
export const MoldTreated = z
  .object({
    mold: z.string(),
    what: z.string(),
    treatedAt: Instant,
    parts: z.array(z.object({ part: z.string(), hull: z.string().nullable(), startedAt: Instant })),
  })
  .meta({ id: 'MoldTreated' });
export type MoldTreated = z.output<typeof MoldTreated>;

/** The same layer of several parts in one entry. What was used is spread over them by their weights. */
export const RecordLayers = Envelope.extend({
  parts: z
    .array(
      z.object({ part: Code, weight: z.number().positive().max(1e9).describe('area, target, or 1 for equal parts') }),
    )
    .min(1)
    .max(60),
  layer: Code,
  startedAt: Instant,
  endedAt: Instant,
  doneBy: Makers,
  climate: Climate.optional(),
  used: z.array(Taken).max(100).default([]).describe('of all parts together'),
  area: Code.optional().describe('area of the shop it was made in; its climate log is joined by time'),
  surfacePrepared: Text.optional().describe('how the layer before was prepared, when it had cured'),
  note: Text.optional(),
})
  .refine((layer) => Date.parse(layer.startedAt) <= Date.parse(layer.endedAt), {
    path: ['endedAt'],
    message: 'must not be before startedAt',
  })
  .meta({ id: 'RecordLayers' });
export type RecordLayers = z.output<typeof RecordLayers>;
export const LayersReceipt = receipt(
  'LayersReceipt',
  z.object({
    kg: z.number(),
    layers: z.array(z.object({ part: z.string(), id: z.uuid() })),
    nonconformities: z.array(Nonconformity),
    warnings: z.array(z.string()),
  }),
);
export type LayersReceipt = z.output<typeof LayersReceipt>;

/** Moves a part to another version of a schedule from a named layer on, which is not made yet. */
export const MoveToSchedule = Envelope.extend({
  version: z.number().int().positive(),
  model: Code.optional().describe("another model's schedule; default: that of the part's own model"),
  fromLayer: Code.describe('code of the first layer that is made by it; in both versions'),
  reason: Text,
}).meta({ id: 'MoveToSchedule' });
export type MoveToSchedule = z.output<typeof MoveToSchedule>;
export const MoveReceipt = receipt('MoveReceipt', z.object({ version: z.number(), fromLayer: z.string() }));
export type MoveReceipt = z.output<typeof MoveReceipt>;
