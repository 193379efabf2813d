import { z } from 'zod';
import { Code, Instant, PageQuery, page } from './envelope.js';
import { Whereabouts } from './hulls.js';
import { recomputing } from './recomputations.js';

export const ReachQuery = PageQuery.extend({
  minShare: z.coerce
    .number()
    .min(0)
    .max(1)
    .default(0)
    .describe("least share, compared with the hull's largest layer share"),
  belowFloor: z
    .enum(['leave out', 'members only'])
    .default('leave out')
    .describe('whether hulls that hold less than 1e-9 are named too'),
});
export type ReachQuery = z.output<typeof ReachQuery>;

/** What unidentified material may be of. */
export const PossiblyAnyOf = z
  .object({
    number: z.number().describe('how many lots it may be of'),
    lots: z.array(z.string()).describe('at most 50 of them, the newest first'),
  })
  .meta({ id: 'PossiblyAnyOf' });
export type PossiblyAnyOf = z.output<typeof PossiblyAnyOf>;
const possiblyAnyOf = PossiblyAnyOf.nullable().describe(
  'of unidentified material: which lots it may be of; null otherwise',
);

const ReachPart = z.object({
  part: z.string(),
  kind: z.string(),
  kg: z.number(),
  shareOfPart: z.number().describe('kg of the lot / kg of all lots of like role in the part'),
  places: z.array(
    z.object({
      place: z.string().describe('layer code, or joint, or repair mark'),
      kind: z.enum(['layer', 'joint', 'repair', 'touch-up']),
      id: z.uuid(),
      role: z.string(),
      kg: z.number(),
      share: z.number().describe('kg of the lot / kg of all lots of the same role in this place'),
      basis: z.string(),
      firstAt: Instant,
      lastAt: Instant,
    }),
  ),
});

/** One hull that holds some of a lot. */
export const ReachedHull = z
  .object({
    hull: z.string().nullable().describe('null: the part is not joined to a hull'),
    hin: z.string().nullable(),
    kg: z.number().nullable().describe('null: under 1e-9 and known as a member only, or only possibly there'),
    basis: z.string().nullable().describe('the weakest basis on the way'),
    largestLayerShare: z.number().nullable(),
    shareOfHull: z.number().nullable(),
    firstAt: Instant.nullable(),
    lastAt: Instant.nullable(),
    trace: z.boolean().describe('true: trace, under 1e-9'),
    possibly: z.boolean().describe('true: it holds unidentified material that may be of this lot'),
    now: Whereabouts.nullable(),
    parts: z.array(ReachPart),
  })
  .meta({ id: 'ReachedHull' });
export type ReachedHull = z.output<typeof ReachedHull>;
export const ReachPage = page('ReachPage', ReachedHull).extend({ recomputing }).meta({ id: 'ReachPage' });
export type ReachPage = z.output<typeof ReachPage>;

const PathStep = z.object({ lot: z.string(), origin: z.string() });

/** One received lot in a hull, and how it came there. */
export const LotInHull = z
  .object({
    lot: z.string(),
    lotId: z.uuid(),
    supplier: z.string().nullable(),
    supplierLot: z.string().nullable(),
    material: z.string().nullable(),
    role: z.string(),
    state: z.string().nullable(),
    kg: z.number(),
    basis: z.string(),
    largestLayerShare: z.number(),
    possiblyAnyOf,
    places: z.array(
      z.object({
        part: z.string(),
        place: z.string(),
        kind: z.string(),
        kg: z.number(),
        share: z.number(),
        paths: z.array(z.array(PathStep)),
      }),
    ),
  })
  .meta({ id: 'LotInHull' });
export type LotInHull = z.output<typeof LotInHull>;

export const HullLots = z
  .object({
    hull: z.string(),
    lots: z.array(LotInHull),
    assumes: z.string().describe('what the figures rest on'),
    recomputing,
  })
  .meta({ id: 'HullLots' });
export type HullLots = z.output<typeof HullLots>;

export const AskSharedLots = z
  .object({
    hulls: z.array(Code).min(1).max(1_000).describe('hull numbers or HINs'),
    minShare: z.number().min(0).max(1).default(0),
    limit: z.number().int().min(1).max(500).default(100),
    cursor: z.string().max(400).optional(),
  })
  .meta({ id: 'AskSharedLots' });
export type AskSharedLots = z.output<typeof AskSharedLots>;

export const SharedLot = z
  .object({
    lot: z.string(),
    lotId: z.uuid(),
    supplier: z.string().nullable(),
    supplierLot: z.string().nullable(),
    material: z.string().nullable(),
    role: z.string(),
    ofThese: z.number().describe('how many of the hulls asked about hold it'),
    ofOthers: z.number().describe('how many other hulls hold it'),
    possiblyAnyOf,
  })
  .meta({ id: 'SharedLot' });
export type SharedLot = z.output<typeof SharedLot>;
export const SharedLotsPage = page('SharedLotsPage', SharedLot).extend({ recomputing }).meta({ id: 'SharedLotsPage' });
export type SharedLotsPage = z.output<typeof SharedLotsPage>;

/** From one defect: the lots in its layer and place, and the other hulls that hold each. */
export const DefectSuspects = z
  .object({
    defect: z.string(),
    hull: z.string().nullable(),
    part: z.string(),
    layer: z.string().nullable(),
    looksAt: z.string().describe('which layers and repairs were looked at'),
    recomputing,
    lots: z.array(
      z.object({
        lot: z.string(),
        lotId: z.uuid(),
        supplierLot: z.string().nullable(),
        material: z.string().nullable(),
        role: z.string(),
        kg: z.number(),
        share: z.number(),
        places: z.array(z.object({ place: z.string(), kind: z.string(), paths: z.array(z.array(PathStep)) })),
        otherHulls: z.array(z.string()),
        otherHullCount: z.number(),
        possiblyAnyOf,
      }),
    ),
  })
  .meta({ id: 'DefectSuspects' });
export type DefectSuspects = z.output<typeof DefectSuspects>;
