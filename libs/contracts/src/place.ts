import { z } from 'zod';

const mm = z.number().min(0).max(100_000);

/** A place on the skin of a part: on the shell by distance from the transom and girth from the keel, or on the transom. */
export const Place = z
  .discriminatedUnion(
    'surface',
    [
      z.object({
        surface: z.literal('shell'),
        side: z.enum(['port', 'starboard', 'centreline']),
        fromTransomMm: mm.describe('along the length, mm'),
        girthMm: mm.describe('along the skin from keel or centreline, mm'),
      }),
      z.object({
        surface: z.literal('transom'),
        side: z.enum(['port', 'starboard', 'centreline']),
        offsetMm: mm.describe('from the centreline, mm'),
        heightMm: mm.describe('from the keel, mm'),
      }),
    ],
    { error: ({ input }) => (input === undefined ? 'say where: a place on the shell or on the transom' : undefined) },
  )
  .meta({ id: 'Place' });
export type Place = z.output<typeof Place>;
