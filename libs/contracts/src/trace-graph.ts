import { z } from 'zod';
import { Instant } from './envelope.js';
import { Whereabouts } from './hulls.js';
import { recomputing } from './recomputations.js';
import { PossiblyAnyOf } from './trace.js';

/** So many lots and hulls one picture holds at most. */
export const TRACED_AT_MOST = 2_000;

export const TraceQuery = z.object({
  nodes: z.coerce
    .number()
    .int()
    .min(2)
    .max(TRACED_AT_MOST)
    .default(TRACED_AT_MOST)
    .describe('lots and hulls at most; of more, those with the most kilograms'),
});
export type TraceQuery = z.output<typeof TraceQuery>;

export const HullTraceQuery = TraceQuery.extend({
  also: z.string().max(1_200).optional().describe('more hull numbers or HINs, separated by commas; 19 at most'),
});
export type HullTraceQuery = z.output<typeof HullTraceQuery>;

/** A paper says how much it prints. */
export const HullTracePaperQuery = HullTraceQuery.pick({ also: true });
export type HullTracePaperQuery = z.output<typeof HullTracePaperQuery>;

/** A lot, a hull, or a part that is in no hull, in the picture of where material went. */
export const TraceNode = z
  .object({
    id: z.uuid(),
    kind: z.enum(['lot', 'hull', 'part']),
    code: z.string().describe('code of the lot, number of the hull or part'),
    origin: z.string().nullable().describe('of a lot: received, mixed, tank, cut, unidentified'),
    material: z.string().nullable(),
    role: z.string().nullable(),
    supplier: z.string().nullable(),
    supplierLot: z.string().nullable(),
    state: z.string().nullable(),
    at: Instant.nullable().describe('of a lot: when it was received or made'),
    kg: z
      .number()
      .nullable()
      .describe('kg of what is traced that came to it; null: only possibly, or under 1e-9 of anything'),
    share: z
      .number()
      .nullable()
      .describe(
        'from a lot: its fraction of a lot made of it, its largest layer share in a hull. From hulls: the largest layer share of a received lot in them',
      ),
    basis: z.string().nullable().describe('the weakest basis on the way'),
    possibly: z.boolean().describe('true: it holds unidentified material that may be of the lot'),
    possiblyAnyOf: PossiblyAnyOf.nullable(),
    hin: z.string().nullable(),
    now: Whereabouts.nullable().describe('where a hull is now'),
  })
  .meta({ id: 'TraceNode' });
export type TraceNode = z.output<typeof TraceNode>;

/** Kilograms that went from a lot into another lot, a hull or a part. */
export const TraceLink = z
  .object({ from: z.uuid(), to: z.uuid(), kg: z.number().describe('kg of what is traced') })
  .meta({ id: 'TraceLink' });
export type TraceLink = z.output<typeof TraceLink>;

/** Where a lot went, or where what is in hulls came from: lots, what was made of them, and hulls. */
export const TraceGraph = z
  .object({
    of: z.enum(['lot', 'hulls']),
    codes: z.array(z.string()).describe('the lot, or the hulls, that was asked about'),
    nodes: z.array(TraceNode).describe('those asked about first, then by kilograms'),
    links: z.array(TraceLink),
    leftOut: z
      .object({ lots: z.number(), hulls: z.number() })
      .nullable()
      .describe('how many with fewer kilograms are left out; null: none is'),
    assumes: z.string().describe('what the figures rest on'),
    recomputing,
  })
  .meta({ id: 'TraceGraph' });
export type TraceGraph = z.output<typeof TraceGraph>;
