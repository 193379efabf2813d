import { z } from 'zod';
import { Market } from './hulls.js';
import { Amount, Decimal } from './amount.js';
import { Code, Day, Envelope, Instant, Text, receipt } from './envelope.js';
import { Climate, Makers } from './parts.js';
import { Place } from './place.js';

const happenedAt = Instant.optional();

/** Whether one thing alone is named as what something was drawn from: a container is of one lot. */
const fromOne = (set: {
  container?: string | undefined;
  lot?: string | undefined;
  input?: string | undefined;
}): boolean => set.container === undefined || (set.lot === undefined && set.input === undefined);
const ONE: { path: string[]; message: string } = {
  path: ['container'],
  message: 'is of one lot: name the container alone',
};

/** What may be set anew, by the kind of fact that is corrected. What is not named stays as it was. */
const Set = z
  .discriminatedUnion('kind', [
    z.object({
      kind: z.literal('lot'),
      supplierLot: Text.optional(),
      supplier: Text.optional(),
      material: Code.optional(),
      madeOn: Day.optional(),
      expiresOn: Day.optional(),
      happenedAt,
    }),
    z
      .object({
        kind: z.literal('lot input'),
        input: Code.optional(),
        container: Code.optional().describe('label of the container it was really from'),
        amount: Amount.optional(),
      })
      .refine(fromOne, ONE),
    z
      .object({
        kind: z.literal('used'),
        lot: Code.optional(),
        container: Code.optional().describe('label of the container it was really from'),
        into: z.uuid().optional(),
        amount: Amount.optional(),
        happenedAt,
      })
      .refine(fromOne, ONE),
    z.object({
      kind: z.literal('container'),
      lot: Code.optional().describe('received lot it is really of: what was drawn from it follows'),
      amount: Amount.optional(),
    }),
    z.object({
      kind: z.literal('layer record'),
      part: Code.optional(),
      layer: Code.optional(),
      startedAt: Instant.optional(),
      endedAt: Instant.optional(),
      doneBy: Makers.optional(),
      climate: Climate.optional(),
      area: Code.optional(),
      surfacePrepared: Text.optional(),
      note: Text.optional(),
    }),
    z.object({
      kind: z.literal('reading'),
      value: Decimal.optional(),
      lastWet: Decimal.optional(),
      nextDry: Decimal.optional(),
      place: Place.optional(),
    }),
    z.object({
      kind: z.literal('defect'),
      defectKind: Code.optional(),
      layer: Code.optional(),
      place: Place.optional(),
      lengthMm: z.number().positive().optional(),
      widthMm: z.number().positive().optional(),
      depthMm: z.number().positive().optional(),
      counted: z.number().int().positive().optional(),
      countedAreaM2: z.number().positive().optional(),
      note: Text.optional(),
    }),
    z.object({ kind: z.literal('hook-up'), lot: Code.optional(), tank: Code.optional(), happenedAt }),
    z.object({
      kind: z.literal('life fact'),
      happenedAt,
      dealer: Code.optional(),
      market: Market.optional(),
      note: Text.optional(),
    }),
  ])
  .meta({ id: 'CorrectedValues' });

/** Corrects a fact: the old one stays and is shown, a new one takes its place, or none when it is withdrawn. */
export const Correct = Envelope.extend({
  corrects: z.uuid().describe('id of the fact as it stands now'),
  reason: Text,
  set: Set.optional().describe('absent: the fact is withdrawn, as it never happened'),
}).meta({ id: 'Correct' });
export type Correct = z.output<typeof Correct>;
export type CorrectedValues = NonNullable<Correct['set']>;

export const CorrectionReceipt = receipt(
  'CorrectionReceipt',
  z.object({ replacement: z.uuid().nullable(), recomposedLots: z.number(), recomputedPlaces: z.number() }),
);
export type CorrectionReceipt = z.output<typeof CorrectionReceipt>;

/** Every version of a fact, oldest first. */
export const VersionsView = z
  .object({
    kind: z.string(),
    versions: z.array(
      z.object({
        id: z.uuid(),
        recordedAt: Instant,
        happenedAt: Instant,
        by: z.string(),
        values: z.record(z.string(), z.unknown()),
        correctedBecause: z.string().nullable(),
        correctedAt: Instant.nullable(),
        correctedBy: z.string().nullable(),
      }),
    ),
  })
  .meta({ id: 'VersionsView' });
export type VersionsView = z.output<typeof VersionsView>;
