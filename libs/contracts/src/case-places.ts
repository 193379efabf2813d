import { z } from 'zod';

/** Where on the hull: hulls affected in each zone, never blisters counted one by one. */
export const CasePlaces = z
  .object({
    hulls: z.number().describe('hulls with a claim of which a place is known'),
    spots: z
      .array(z.object({ x: z.number(), y: z.number(), hull: z.string() }))
      .describe('places on the map unrolled, as shares: x of the length from the transom, y of the edge, port above 0'),
    zones: z.array(
      z.object({
        name: z.string(),
        x: z.number(),
        y: z.number(),
        hulls: z.number().describe('hulls affected in it'),
        areaShare: z.number().describe('of the skin'),
        perArea: z.number().describe('hulls over what an even spread would give'),
      }),
    ),
    cluster: z
      .object({
        zones: z.array(z.string()),
        hulls: z.number().describe('each counted once, in the zone of most of its places'),
        expected: z.number(),
        ratio: z.number(),
        p: z.number().describe('simulated, seeded; allows for all windows looked at'),
      })
      .nullable(),
    sentence: z.string(),
    cannotSay: z.string(),
  })
  .meta({ id: 'CasePlaces' });
export type CasePlaces = z.output<typeof CasePlaces>;
