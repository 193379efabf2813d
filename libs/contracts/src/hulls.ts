import { z } from 'zod';
import { RETENTION_RULES } from '@hull-record/trade';
import { Code, Envelope, Instant, Nonconformity, PageQuery, Text, page, receipt } from './envelope.js';

export const LIFE_FACTS = [
  'part started',
  'demolded',
  'HIN affixed',
  'released',
  'left the place of manufacture',
  'at dealer',
  'sold to first purchaser',
  'warranty registered',
  'transferred',
  'returned',
  'scrapped',
  'exported',
] as const;

/** Starts a hull under its builder's number, with its hull molding in a mold. */
export const StartHull = Envelope.extend({
  number: Code.describe("the builder's hull number, its permanent key"),
  model: Code,
  mold: Code,
  scheduleVersion: z.number().int().positive().optional().describe('default: the newest published version'),
  partNumber: Code.optional().describe('default: the hull number followed by -H'),
}).meta({ id: 'StartHull' });
export type StartHull = z.output<typeof StartHull>;

export const AssignHin = Envelope.extend({
  hin: Code.describe('hull identification number, 33 CFR 181 or ISO 10087; dashes and spaces are dropped'),
  reason: Text.optional().describe('required when the hull has a HIN already'),
}).meta({ id: 'AssignHin' });
export type AssignHin = z.output<typeof AssignHin>;

/** Markets with a rule for how long a record is kept. */
export const Market = z.enum(
  Object.keys(RETENTION_RULES) as [keyof typeof RETENTION_RULES, ...(keyof typeof RETENTION_RULES)[]],
);

/** A fact in the life of a boat. A release has a call of its own. */
export const RecordLifeFact = Envelope.extend({
  what: z.enum(LIFE_FACTS).exclude(['released', 'part started']),
  dealer: Code.optional().describe('required for "at dealer"'),
  market: Market.optional().describe('on which market it is placed, when it leaves: says how long its record is kept'),
  note: Text.optional(),
})
  .refine((fact) => fact.what !== 'at dealer' || fact.dealer !== undefined, {
    path: ['dealer'],
    message: 'name the dealer',
  })
  .meta({ id: 'RecordLifeFact' });
export type RecordLifeFact = z.output<typeof RecordLifeFact>;

export const ReleaseHull = Envelope.meta({ id: 'ReleaseHull' });
export type ReleaseHull = z.output<typeof ReleaseHull>;

export const HullReceipt = receipt(
  'HullReceipt',
  z.object({
    number: z.string(),
    part: z.string(),
    scheduleVersion: z.number(),
    nonconformities: z.array(Nonconformity),
    warnings: z.array(z.string()),
  }),
);
export type HullReceipt = z.output<typeof HullReceipt>;
/** Where the two numbers go, for the person who affixes them. */
export const HinPlacement = z
  .object({
    primary: z.string(),
    primaryWithoutTransom: z.string(),
    secondary: z.string(),
    height: z.string(),
    source: z.string(),
  })
  .meta({ id: 'HinPlacement' });

export const HinReceipt = receipt(
  'HinReceipt',
  z.object({ hin: z.string(), display: z.string(), warnings: z.array(z.string()), placement: HinPlacement }),
);
export type HinReceipt = z.output<typeof HinReceipt>;
export const LifeReceipt = receipt(
  'LifeReceipt',
  z.object({ what: z.string(), nonconformities: z.array(Nonconformity), warnings: z.array(z.string()) }),
);
export type LifeReceipt = z.output<typeof LifeReceipt>;

/** One thing that stands in the way of release. */
export const Obstacle = z
  .object({
    rule: z.string().describe('stable name of the rule'),
    part: z.string().nullable(),
    layer: z.string().nullable(),
    about: z.uuid().nullable().describe('the fact it is about'),
    detail: z.string(),
  })
  .meta({ id: 'Obstacle' });
export type Obstacle = z.output<typeof Obstacle>;

export const ListHullsQuery = PageQuery.extend({
  model: Code.optional(),
  search: z.string().trim().max(60).optional().describe('part of the hull number or of a HIN'),
  now: z.enum(LIFE_FACTS).optional().describe('newest life fact: where hulls are now'),
  dealer: Code.optional().describe('code of the dealer who has, or had last, the hull'),
  released: z.enum(['yes', 'no']).optional().describe('whether it was released'),
});
export type ListHullsQuery = z.output<typeof ListHullsQuery>;

const Whereabouts = z
  .object({ what: z.string(), dealer: z.string().nullable(), since: Instant })
  .describe('the newest life fact: where the hull is now and since when')
  .meta({ id: 'Whereabouts' });
export { Whereabouts };
export type Whereabouts = z.output<typeof Whereabouts>;

export const HullListItem = z
  .object({
    id: z.uuid(),
    number: z.string(),
    hin: z.string().nullable(),
    model: z.string(),
    modelName: z.string(),
    startedAt: Instant,
    layersMade: z.number(),
    layersScheduled: z.number(),
    openDefects: z.number(),
    now: Whereabouts,
  })
  .meta({ id: 'HullListItem' });
export type HullListItem = z.output<typeof HullListItem>;
export const HullPage = page('HullPage', HullListItem);
export type HullPage = z.output<typeof HullPage>;

export const HullView = z
  .object({
    id: z.uuid(),
    number: z.string(),
    hin: z.string().nullable(),
    numbers: z.array(
      z.object({
        kind: z.string(),
        number: z.string(),
        happenedAt: Instant,
        reason: z.string().nullable(),
        authority: z.string().nullable(),
      }),
    ),
    model: z.string(),
    modelName: z.string(),
    life: z.array(
      z.object({
        id: z.uuid(),
        what: z.string(),
        dealer: z.string().nullable(),
        note: z.string().nullable(),
        happenedAt: Instant,
        recordedAt: Instant,
        by: z.string(),
      }),
    ),
    now: Whereabouts,
    parts: z.array(
      z.object({
        number: z.string(),
        kind: z.string(),
        mold: z.string(),
        scheduleVersion: z.number(),
        joinedAt: Instant,
        joint: z.uuid(),
        layersMade: z.number(),
        layersScheduled: z.number(),
      }),
    ),
    keepUntil: z
      .object({ day: z.string(), because: z.string(), source: z.string() })
      .nullable()
      .describe('day until which the record is kept at least; null while it is not released. Local law comes first'),
    release: z.object({
      releasedAt: Instant.nullable(),
      questioned: z.boolean().describe('it was released, and something stands in the way since'),
      inTheWay: z.array(Obstacle),
    }),
  })
  .meta({ id: 'HullView' });
export type HullView = z.output<typeof HullView>;
