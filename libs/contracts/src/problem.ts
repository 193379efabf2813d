import { z } from 'zod';

/** A refusal as RFC 9457 problem details, with a JSON pointer (RFC 6901) for each wrong field. */
export const Problem = z
  .object({
    type: z.string().describe('stable: /problems/ and the code of the error'),
    title: z.string(),
    status: z.number().int(),
    detail: z.string(),
    errors: z.array(z.object({ pointer: z.string(), detail: z.string() })).optional(),
  })
  .catchall(z.unknown())
  .meta({ id: 'Problem' });
export type Problem = z.output<typeof Problem>;

export const Health = z
  .object({
    ready: z.boolean(),
    demo: z.object({
      state: z.enum(['off', 'loading', 'loaded', 'failed']),
      done: z.number(),
      total: z.number(),
      detail: z.string().optional(),
    }),
  })
  .meta({ id: 'Health' });
export type Health = z.output<typeof Health>;
