import { z } from 'zod';
import { Decimal, Unit } from './amount.js';
import { Code, Envelope, Instant, Text, receipt } from './envelope.js';
import { Limits, READING_KINDS } from './models.js';
import { Place } from './place.js';

/** One spot. A wet-film gauge gives an interval: the last tooth that was wetted and the next that stayed dry. */
export const Spot = z
  .object({
    value: Decimal.optional().describe('the reading; for a wet-film gauge give lastWet and nextDry'),
    lastWet: Decimal.optional(),
    nextDry: Decimal.optional(),
    place: Place.optional(),
    readsAgain: z.uuid().optional().describe('id of the reading whose spot is read again, after it was reworked'),
  })
  .refine((spot) => (spot.value === undefined) !== (spot.lastWet === undefined), {
    path: ['value'],
    message: 'give either value, or lastWet and nextDry',
  })
  .refine((spot) => (spot.lastWet === undefined) === (spot.nextDry === undefined), {
    path: ['nextDry'],
    message: 'a gauge interval has both ends: lastWet and nextDry',
  })
  .refine((spot) => spot.nextDry === undefined || Number(spot.nextDry) > Number(spot.lastWet), {
    path: ['nextDry'],
    message: 'must be more than lastWet',
  })
  .meta({ id: 'Spot' });
export type Spot = z.output<typeof Spot>;

/** Readings of one kind at several spots, judged spot by spot; each verdict keeps the limits it was judged by. */
export const TakeReadings = Envelope.extend({
  what: z.enum(READING_KINDS),
  unit: Unit,
  equipment: Code.optional(),
  spots: z.array(Spot).min(1).max(1_000),
}).meta({ id: 'TakeReadings' });
export type TakeReadings = z.output<typeof TakeReadings>;

const withLimits = TakeReadings.extend({
  limits: Limits.optional(),
  source: Text.optional().describe('where the limits come from'),
}).refine((readings) => readings.limits === undefined || readings.source !== undefined, {
  path: ['source'],
  message: 'say where the limits come from',
});

/** Readings of a joint. Its limits are those of the assembly procedure, which is named. */
export const ReadJoint = withLimits.meta({ id: 'ReadJoint' });

/** Readings of a whole part, as its weight at demold against its target, or of a lot, as gel time, exotherm or viscosity. */
export const ReadWhole = withLimits.meta({ id: 'ReadWhole' });
export type ReadWhole = z.output<typeof ReadWhole>;
export type ReadJoint = z.output<typeof ReadJoint>;

export const JudgedSpot = z
  .object({
    id: z.uuid(),
    spot: z.number(),
    verdict: z.enum(['inside', 'outside', 'cannot be judged', 'no limit']),
    side: z.enum(['low', 'high']).nullable(),
    note: z.string().nullable(),
  })
  .meta({ id: 'JudgedSpot' });

export const ReadingsReceipt = receipt(
  'ReadingsReceipt',
  z.object({ inside: z.number(), outside: z.number(), spots: z.array(JudgedSpot), warnings: z.array(z.string()) }),
);
export type ReadingsReceipt = z.output<typeof ReadingsReceipt>;

export const ReadingView = z
  .object({
    id: z.uuid(),
    what: z.string(),
    spot: z.number(),
    value: z.string(),
    below: z.string().nullable().describe('upper end of a gauge interval, not reached'),
    unit: z.string(),
    si: z.number().describe('SI value'),
    place: Place.nullable(),
    equipment: z.string().nullable(),
    verdict: z.string(),
    crossesLimit: z.boolean(),
    rule: z.object({ limits: z.unknown().nullable(), text: z.string() }),
    by: z.string(),
    happenedAt: Instant,
    concession: z.string().nullable(),
    suspect: z.boolean().describe('taken with equipment that may have been unfit then'),
  })
  .meta({ id: 'ReadingView' });
export type ReadingView = z.output<typeof ReadingView>;
