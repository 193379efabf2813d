import { z } from 'zod';
import { READING_KINDS_OF_THE_SHOP, type ReadingKindName } from '@hull-record/trade';
import { Code, Envelope, Text, receipt } from './envelope.js';
import { Positive, Unit } from './amount.js';
import { Laminate, LayerDemand } from './laminate.js';

export const PART_KINDS = ['hull molding', 'deck', 'liner', 'stringer grid', 'hatch'] as const;
export const PartKind = z.enum(PART_KINDS);

const mm = z.number().min(0).max(100_000);

/** The skin of a part as girth by station: what its hull map is drawn from. All in mm. */
export const Skin = z
  .object({
    lengthMm: z.number().positive().max(100_000),
    stations: z
      .array(
        z.object({
          xMm: mm.describe('from the transom'),
          edgeGirthMm: mm.describe('along the skin from keel or centreline to the edge'),
          chineGirthMm: mm.optional(),
          waterlineGirthMm: mm.optional(),
        }),
      )
      .min(2)
      .max(60),
    transom: z.object({ halfWidthMm: mm, heightMm: mm }).optional(),
  })
  .meta({ id: 'Skin' });

export const RegisterModel = Envelope.extend({
  code: Code,
  name: Text,
  requiredParts: z
    .array(PartKind)
    .max(5)
    .default(['hull molding'])
    .describe('parts without which a hull of this model is not released'),
  skins: z.partialRecord(PartKind, Skin).refine((skins) => skins['hull molding'] !== undefined, {
    path: ['hull molding'],
    message: 'give at least the skin of the hull molding',
  }),
}).meta({ id: 'RegisterModel' });
export type RegisterModel = z.output<typeof RegisterModel>;

export const Limits = z
  .object({ min: z.number().optional(), max: z.number().optional(), unit: Unit })
  .refine((limits) => limits.min !== undefined || limits.max !== undefined, {
    path: ['min'],
    message: 'give min, max or both',
  })
  .refine((limits) => limits.min === undefined || limits.max === undefined || limits.min <= limits.max, {
    path: ['max'],
    message: 'must not be less than min',
  })
  .meta({ id: 'Limits' });
export type Limits = z.output<typeof Limits>;

const kinds = Object.keys(READING_KINDS_OF_THE_SHOP) as [ReadingKindName, ...ReadingKindName[]];

/** Controls of the shop that are read. */
export const READING_KINDS = kinds;

const RequiredReading = z
  .object({
    what: z.enum(READING_KINDS),
    spots: z.number().int().min(1).max(200).describe('how many spots at least'),
    limits: Limits,
    where: Text.optional(),
    source: Text.optional().describe('where the limit comes from, as a data sheet or a standard'),
  })
  .meta({ id: 'RequiredReading' });
export type RequiredReading = z.output<typeof RequiredReading>;

export const ScheduleLayer = z
  .object({
    code: Code,
    name: Text,
    zone: Text.default('whole part'),
    plies: z.array(Text).max(40).default([]),
    areaM2: z.number().positive().max(10_000).optional().describe('m2 that the layer covers'),
    laminate: Laminate.optional(),
    lossAllowance: z
      .number()
      .min(0)
      .lt(1)
      .optional()
      .describe('largest part of the liquid used that overspray and losses may take'),
    materials: z
      .array(z.object({ material: Code, target: z.object({ quantity: Positive, unit: Unit }).optional() }))
      .min(1)
      .max(40)
      .describe('what may be used, with the target amount'),
    readings: z.array(RequiredReading).max(20).default([]),
    climate: z.object({ airTemperature: Limits.optional(), relativeHumidity: Limits.optional() }).optional(),
    layUpWindow: z
      .object({ earliestMinutes: z.number().min(0), latestMinutes: z.number().positive() })
      .optional()
      .describe('for the next layer; later than the latest is a secondary bond'),
    predecessors: z.array(Code).max(40).default([]).describe('layers that must be made before'),
    holdPoint: Text.optional().describe('what another person inspects and signs before work goes on'),
  })
  .meta({ id: 'ScheduleLayer' });
export type ScheduleLayer = z.output<typeof ScheduleLayer>;

/** Publishes a version of a laminate schedule, layers outside in. A published version never changes. */
export const PublishSchedule = Envelope.extend({
  partKind: PartKind,
  version: z.number().int().positive(),
  process: z
    .enum(['hand lay-up', 'spray-up'], {
      error: 'must be hand lay-up or spray-up: infusion and other closed-mold processes are out of scope',
    })
    .default('hand lay-up'),
  layers: z.array(ScheduleLayer).min(1).max(60),
}).meta({ id: 'PublishSchedule' });
export type PublishSchedule = z.output<typeof PublishSchedule>;

export const RegisterMold = Envelope.extend({ code: Code, model: Code, partKind: PartKind }).meta({
  id: 'RegisterMold',
});
export type RegisterMold = z.output<typeof RegisterMold>;

export const ScheduleReceipt = receipt('ScheduleReceipt', z.object({ version: z.number(), layers: z.number() }));
export type ScheduleReceipt = z.output<typeof ScheduleReceipt>;

export const ScheduleView = z
  .object({
    id: z.uuid(),
    model: z.string(),
    partKind: z.string(),
    version: z.number(),
    process: z.string(),
    layers: z.array(ScheduleLayer.extend({ demand: LayerDemand.nullable() })),
  })
  .meta({ id: 'ScheduleView' });
export type ScheduleView = z.output<typeof ScheduleView>;

export const ModelView = z
  .object({
    id: z.uuid(),
    code: z.string(),
    name: z.string(),
    requiredParts: z.array(PartKind),
    skins: z.partialRecord(PartKind, Skin),
    schedules: z.array(ScheduleView),
  })
  .meta({ id: 'ModelView' });
export type ModelView = z.output<typeof ModelView>;

export const MoldView = z
  .object({
    id: z.uuid(),
    code: z.string(),
    model: z.string(),
    partKind: z.string(),
    pulls: z.number(),
    overdue: z.array(z.string()).describe('care that is overdue, in words'),
  })
  .meta({ id: 'MoldView' });
