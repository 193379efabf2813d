import { z } from 'zod';
import { Code } from './envelope.js';

/** Marks or ids of defects, named again and again or in one list with commas. */
export const RepairOrderQuery = z.object({
  defect: z
    .preprocess(
      (given) =>
        (Array.isArray(given) ? given : [given]).flatMap((one: unknown) =>
          typeof one === 'string' ? one.split(',') : [one],
        ),
      z.array(Code).min(1).max(200),
    )
    .optional()
    .describe('marks such as D1, or ids, of the defects to repair; all open ones of the part when left out'),
});
export type RepairOrderQuery = z.output<typeof RepairOrderQuery>;
