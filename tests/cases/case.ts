import { z } from 'zod';

/** One case: a check, its input and what is expected of it, with where the expectation comes from. */
export const Case = z
  .strictObject({
    id: z.string().min(1),
    check: z.string().optional(),
    method: z.string().optional(),
    input: z.unknown(),
    expected: z.unknown(),
    rel_tol: z.number().nonnegative().optional(),
    abs_tol: z.number().nonnegative().optional(),
    source: z.string().optional(),
    kind: z.string().optional(),
    as_printed_in_source: z.unknown().optional(),
    note: z.string().optional(),
  })
  .refine(
    (given) => (given.check === undefined) !== (given.method === undefined),
    'name check, or method, which is the same',
  )
  .transform(({ method, ...given }) => ({ ...given, check: given.check ?? (method as string) }));
export type Case = z.output<typeof Case>;

/** A list of cases, or an object that holds one. */
export const CaseFile = z.union([
  z.array(z.unknown()),
  z.object({ cases: z.array(z.unknown()) }).transform(({ cases }) => cases),
]);
