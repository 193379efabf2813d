import { z } from 'zod';
import { Day, Instant, PageQuery, page } from './envelope.js';

/** Fewer hulls than these make no group: a count of so few would say who, and not what. */
export const LEAST_GROUP = 5;

export const WAITING_FOR = ['disposition', 'answer', 'acceptance'] as const;

export const WaitingQuery = PageQuery.extend({
  for: z.enum(WAITING_FOR).optional().describe('what it waits for; all of it when left out'),
});
export type WaitingQuery = z.output<typeof WaitingQuery>;

/** Something that waits for the word of somebody: a decision, the answer to what a defect of cure asks, an acceptance. */
export const WaitingView = z
  .object({
    id: z.uuid().describe('of what it is about, as the decision names it'),
    of: z.enum(['defect', 'reading', 'equipment check', 'repair']),
    for: z.enum(WAITING_FOR),
    what: z.string().describe('kind of defect, what was read or checked, mark of the repair'),
    detail: z.string(),
    part: z.string().nullable(),
    hull: z.string().nullable(),
    layer: z.string().nullable(),
    equipment: z.string().nullable(),
    happenedAt: Instant,
  })
  .meta({ id: 'WaitingView' });
export type WaitingView = z.output<typeof WaitingView>;

export const WaitingPage = page('WaitingPage', WaitingView);
export type WaitingPage = z.output<typeof WaitingPage>;

export const COUNTED_BY = ['kind', 'zone', 'mold', 'material'] as const;

export const DefectCountsQuery = z.object({
  by: z.enum(COUNTED_BY).default('kind'),
  from: Day.optional().describe('first day, by the clock of the plant, on which the hulls counted were begun'),
  to: Day.optional().describe('last day'),
});
export type DefectCountsQuery = z.output<typeof DefectCountsQuery>;

/**
 * Defects per hull made. Of kinds and zones the hulls are all that were made; of a mold those with a part of it; of a
 * material those that hold some of it, with the defects in the layers and parts that hold it.
 */
export const DefectCounts = z
  .object({
    by: z.enum(COUNTED_BY),
    hullsMade: z.number().describe('hulls with a layer on record'),
    groups: z.array(
      z.object({
        name: z.string(),
        defects: z.number(),
        hulls: z.number().describe('hulls made that the count is out of'),
        perHull: z.number(),
      }),
    ),
    notShown: z.number().describe('groups of fewer than five hulls, which are not shown'),
  })
  .meta({ id: 'DefectCounts' });
export type DefectCounts = z.output<typeof DefectCounts>;

export const HullsByState = z
  .array(z.object({ what: z.string().describe('newest life fact'), hulls: z.number() }))
  .meta({ id: 'HullsByState' });
export type HullsByState = z.output<typeof HullsByState>;

/** Something that is used as it is under a numbered concession. */
export const ConcessionView = z
  .object({
    id: z.uuid(),
    concession: z.string(),
    of: z.string(),
    about: z.uuid(),
    what: z.string(),
    part: z.string().nullable(),
    hull: z.string().nullable(),
    reason: z.string(),
    by: z.string(),
    happenedAt: Instant,
  })
  .meta({ id: 'ConcessionView' });
export type ConcessionView = z.output<typeof ConcessionView>;

export const ConcessionPage = page('ConcessionPage', ConcessionView);
export type ConcessionPage = z.output<typeof ConcessionPage>;
