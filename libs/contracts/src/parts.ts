import { z } from 'zod';
import { AmountView, Taken } from './amount.js';
import { Code, Envelope, Instant, Nonconformity, Text, receipt } from './envelope.js';
import { PartKind, ScheduleLayer } from './models.js';
import { DefectView } from './defects.js';
import { LayerDemand } from './laminate.js';
import { WentOn } from './checks.js';
import { RepairView } from './repairs.js';
import { TouchUpView } from './touch-ups.js';
import { ReadingView } from './readings.js';
import { recomputing } from './recomputations.js';
import { VerdictView } from './verdicts.js';

/** Starts a molded part other than a hull molding: deck, liner, stringer grid, hatch. */
export const StartPart = Envelope.extend({
  number: Code,
  kind: PartKind.exclude(['hull molding']),
  model: Code,
  mold: Code,
  scheduleVersion: z.number().int().positive().optional().describe('default: the newest published version'),
}).meta({ id: 'StartPart' });
export type StartPart = z.output<typeof StartPart>;

export const Makers = z
  .array(Code)
  .min(1)
  .max(40)
  .describe('badges of those who did it; whoever enters it need not be one of them');

/** Joins a part to a hull, with what was used to bond it. */
export const JoinPart = Envelope.extend({
  part: Code,
  doneBy: Makers,
  used: z.array(Taken).max(100).default([]),
}).meta({ id: 'JoinPart' });
export type JoinPart = z.output<typeof JoinPart>;

const temperature = z.object({ value: z.number(), unit: z.enum(['C', 'F', 'K']) });

export const Climate = z
  .object({
    airTemperature: temperature.optional(),
    moldTemperature: temperature.optional().describe('surface of the mold'),
    relativeHumidity: z.object({ value: z.number().min(0).max(100), unit: z.literal('%') }).optional(),
  })
  .meta({ id: 'Climate' });
export type Climate = z.output<typeof Climate>;

/** Records one layer as it was really made. It is kept even when it broke a rule; what broke is opened as a nonconformity. */
export const RecordLayer = Envelope.extend({
  layer: Code.describe('code of the layer in the schedule'),
  startedAt: Instant,
  endedAt: Instant,
  doneBy: Makers,
  climate: Climate.optional(),
  area: Code.optional().describe('area of the shop it was made in; its climate log is joined by time'),
  surfacePrepared: Text.optional().describe('how the layer before was prepared, when it had cured: a secondary bond'),
  used: z.array(Taken).max(100).default([]),
  note: Text.optional(),
})
  .refine((layer) => Date.parse(layer.startedAt) <= Date.parse(layer.endedAt), {
    path: ['endedAt'],
    message: 'must not be before startedAt',
  })
  .meta({ id: 'RecordLayer' });
export type RecordLayer = z.output<typeof RecordLayer>;

/** Adds what was used to a layer, joint or repair recorded earlier. */
export const RecordUse = Envelope.extend({ used: z.array(Taken).min(1).max(100) }).meta({ id: 'RecordUse' });
export type RecordUse = z.output<typeof RecordUse>;

/** The one who enters this signs the hold point of the layer; it must be someone who did not make it. */
export const SignHoldPoint = Envelope.meta({ id: 'SignHoldPoint' });
export type SignHoldPoint = z.output<typeof SignHoldPoint>;

export const PartReceipt = receipt(
  'PartReceipt',
  z.object({
    number: z.string(),
    scheduleVersion: z.number(),
    nonconformities: z.array(Nonconformity),
    warnings: z.array(z.string()),
  }),
);
export type PartReceipt = z.output<typeof PartReceipt>;
export const MadeReceipt = receipt(
  'MadeReceipt',
  z.object({ kg: z.number(), nonconformities: z.array(Nonconformity), warnings: z.array(z.string()) }),
);
export type MadeReceipt = z.output<typeof MadeReceipt>;
export const SignatureReceipt = receipt('SignatureReceipt', z.object({ holdPoint: z.string(), identity: z.string() }));
export type SignatureReceipt = z.output<typeof SignatureReceipt>;

export const UsedView = z
  .object({
    id: z.uuid(),
    lot: z.string(),
    lotId: z.uuid(),
    tank: z.string().nullable(),
    supplierLots: z.array(z.object({ supplierLot: z.string(), material: z.string(), fraction: z.number() })),
    amount: AmountView,
    happenedAt: Instant,
    corrected: z.boolean(),
  })
  .meta({ id: 'UsedView' });
export type UsedView = z.output<typeof UsedView>;

export const LayerRecordView = z
  .object({
    id: z.uuid(),
    startedAt: Instant,
    endedAt: Instant,
    recordedAt: Instant,
    doneBy: z.array(z.string()),
    enteredBy: z.string(),
    climate: Climate.nullable(),
    note: z.string().nullable(),
    used: z.array(UsedView),
    readings: z.array(ReadingView),
    verdicts: z.array(VerdictView),
    nextLayer: z
      .object({ from: Instant, until: Instant.nullable(), source: z.string() })
      .nullable()
      .describe('when the next layer bonds to this one; later is a secondary bond. null: no window is known'),
    area: z.string().nullable(),
    surfacePrepared: z.string().nullable(),
    signature: z.object({ by: z.string(), at: Instant, identity: z.string() }).nullable(),
    corrected: z.boolean().describe('an earlier version of this record stands in the history'),
  })
  .meta({ id: 'LayerRecordView' });
export type LayerRecordView = z.output<typeof LayerRecordView>;

export const PartView = z
  .object({
    id: z.uuid(),
    number: z.string(),
    kind: z.string(),
    model: z.string(),
    mold: z.string(),
    scheduleVersion: z.number(),
    hull: z.string().nullable(),
    layers: z.array(
      z.object({ scheduled: ScheduleLayer, demand: LayerDemand.nullable(), record: LayerRecordView.nullable() }),
    ),
    defects: z.array(DefectView),
    repairs: z.array(RepairView),
    touchUps: z.array(TouchUpView),
    recomputing,
    partReadings: z.array(ReadingView).describe('readings of the part as a whole, such as its weight'),
    jointReadings: z.array(ReadingView).describe('readings of the joint by which it is in its hull'),
    scrapped: z.object({ reason: z.string(), at: Instant }).nullable(),
    nonconformities: z.array(
      z.object({
        id: z.uuid(),
        rule: z.string(),
        detail: z.string(),
        happenedAt: Instant,
        disposition: z.string().nullable(),
        goOn: WentOn.nullable(),
      }),
    ),
  })
  .meta({ id: 'PartView' });
export type PartView = z.output<typeof PartView>;
