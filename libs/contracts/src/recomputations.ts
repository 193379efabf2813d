import { z } from 'zod';
import { Instant, page } from './envelope.js';

/** Says that figures of an answer are being worked out anew after a correction. */
export const Recomputing = z
  .object({
    since: Instant.describe('when the oldest of the corrections was recorded'),
    recomputations: z.array(z.uuid()).describe('ids of the corrections: see GET /api/recomputations'),
    says: z.string(),
  })
  .meta({ id: 'Recomputing' });
export type Recomputing = z.output<typeof Recomputing>;

/** Of an answer: null when its figures are as the facts are. */
export const recomputing = Recomputing.nullable().describe(
  'null: the figures are up to date; else they are being worked out anew after a correction, and may change',
);

const Progress = z.object({ total: z.number(), left: z.number() });

/** What a correction reached that was much: it is worked out by a job, while work goes on. */
export const RecomputationView = z
  .object({
    id: z.uuid().describe('the id of the correction'),
    because: z.string().describe('what was recorded'),
    askedAt: Instant,
    finishedAt: Instant.nullable().describe('null: not finished'),
    tankLots: Progress.describe('tank lots whose composition is worked out anew, in order'),
    places: Progress.describe('layers, joints, repairs and touch-ups'),
    nonconformities: z.number().nullable().describe('how many came to light; null until it is finished'),
    trouble: z.string().nullable().describe('what went wrong at the last try; it is tried again by itself'),
  })
  .meta({ id: 'RecomputationView' });
export type RecomputationView = z.output<typeof RecomputationView>;

export const RecomputationsPage = page('RecomputationsPage', RecomputationView);
export type RecomputationsPage = z.output<typeof RecomputationsPage>;
