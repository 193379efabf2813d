import { z } from 'zod';
import { Envelope, Instant, Nonconformity, receipt } from './envelope.js';

const Point = z.object({
  at: Instant,
  airTemperature: z.object({ value: z.number(), unit: z.enum(['C', 'F', 'K']) }),
  relativeHumidity: z.object({ value: z.number(), unit: z.literal('%') }),
});

/** A series of the climate log of an area of the shop, as its logger gives it. */
export const ImportClimate = Envelope.extend({
  points: z.array(Point).min(1).max(5_000).describe('in any order; an area has one point at an instant'),
}).meta({ id: 'ImportClimate' });
export type ImportClimate = z.output<typeof ImportClimate>;

const Imported = z.object({
  area: z.string(),
  points: z.number(),
  nonconformities: z.array(Nonconformity).describe('of layers that were made there meanwhile'),
  warnings: z.array(z.string()),
});
export const ClimateReceipt = receipt('ClimateReceipt', Imported);

export const ReadClimateQuery = z.object({ from: Instant.optional(), to: Instant.optional() });
export type ReadClimateQuery = z.output<typeof ReadClimateQuery>;

export const ClimateLogView = z
  .object({
    area: z.string(),
    points: z
      .array(
        z.object({ id: z.uuid(), at: Instant, airC: z.number(), humidityPercent: z.number(), dewPointC: z.number() }),
      )
      .describe('at most 5,000, in the order of time; the dew point by the Magnus formula (Sonntag 1990; WMO Guide)'),
    largestDailySpreadC: z.number().nullable().describe('largest spread of air temperature within any 24 h'),
  })
  .meta({ id: 'ClimateLogView' });
export type ClimateLogView = z.output<typeof ClimateLogView>;
