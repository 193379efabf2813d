import { z } from 'zod';
import { FEEDS } from './amount.js';
import { Day, Instant } from './envelope.js';
import { ScheduleLayer } from './models.js';
import { PlantRules } from './verdicts.js';

/** A layer as made, as far as the station works with it. */
const MadeLayer = z.object({
  id: z.uuid(),
  endedAt: Instant,
  doneBy: z.array(z.string()),
  nextLayer: z.object({ from: Instant, until: Instant.nullable(), source: z.string() }).nullable(),
  readings: z.array(
    z.object({
      id: z.uuid(),
      what: z.string(),
      spot: z.number(),
      value: z.string(),
      below: z.string().nullable(),
      unit: z.string(),
      verdict: z.string(),
    }),
  ),
  signature: z.object({ by: z.string(), at: Instant, identity: z.string() }).nullable(),
});

/** A part on which something is to be done: a layer, a reading or a signature is missing. */
export const DayPart = z
  .object({
    number: z.string(),
    kind: z.string(),
    hull: z.string().nullable(),
    model: z.string(),
    mold: z.string(),
    layers: z.array(z.object({ scheduled: ScheduleLayer, record: MadeLayer.nullable() })),
  })
  .meta({ id: 'DayPart' });
export type DayPart = z.output<typeof DayPart>;

/** A lot of which there is some: what came in, the buckets and kits of the last days, and what tanks hold. */
export const DayLot = z
  .object({
    code: z.string(),
    origin: z.string(),
    materials: z.array(z.string()).describe('codes: its own, or of what it was made of'),
    tank: z.string().nullable(),
    expiresOn: Day.nullable(),
    state: z.string(),
    holds: z.array(z.string()),
    leftKg: z.number(),
    happenedAt: Instant,
  })
  .meta({ id: 'DayLot' });
export type DayLot = z.output<typeof DayLot>;

/** What a station needs to go on with no network: the day's parts, lots, equipment and people, as at an instant. */
export const DaySheet = z
  .object({
    at: Instant,
    marginRule: PlantRules.shape.marginRule.describe(
      'by which the plant judges the surface of a mold over the dew point',
    ),
    people: z.array(z.object({ badge: z.string(), roles: z.array(z.string()) })),
    materials: z.array(z.object({ code: z.string(), name: z.string(), role: z.string() })),
    parts: z.array(DayPart).describe('at most 80, those worked on last first'),
    lots: z.array(DayLot),
    gauges: z.array(z.object({ code: z.string(), description: z.string() })),
    guns: z.array(
      z.object({
        code: z.string(),
        description: z.string(),
        feeds: z.array(z.object({ feed: z.enum(FEEDS), lot: z.string().nullable(), materials: z.array(z.string()) })),
      }),
    ),
  })
  .meta({ id: 'DaySheet' });
export type DaySheet = z.output<typeof DaySheet>;
