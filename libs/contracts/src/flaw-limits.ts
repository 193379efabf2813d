import { z } from 'zod';
import { DEFECT_KINDS, type DefectKind } from '@hull-record/trade';
import { Envelope, Instant, Text, receipt } from './envelope.js';

const kinds = DEFECT_KINDS.map(({ code }) => code) as [DefectKind, ...DefectKind[]];

const Limit = z
  .object({
    mm: z.number().positive().max(20_000).describe('largest size that passes, mm'),
    inches: z.number().positive().max(800).describe('the same in inches, as rounded by whoever set it'),
    count: z
      .object({ atMost: z.number().int().positive(), areaMm2: z.number().positive() })
      .optional()
      .describe('at most so many in an area'),
    depth: Text.optional(),
  })
  .nullable()
  .describe('null: none is permitted');

export const FlawRow = z.object({ kind: z.enum(kinds), II: Limit, III: Limit, source: Text }).meta({ id: 'FlawRow' });
export type FlawRow = z.output<typeof FlawRow>;

const Level = z.enum(['I', 'II', 'III']);

/** At which level the plant accepts flaws from then on, with rows of its own. No verdict given before changes. */
export const SetFlawLimits = Envelope.extend({
  level: Level.nullable().describe('null: flaws are not judged by a table'),
  rows: z.array(FlawRow).max(60).default([]).describe('rows that stand instead of those of the default table'),
  reason: Text,
}).meta({ id: 'SetFlawLimits' });
export type SetFlawLimits = z.output<typeof SetFlawLimits>;

export const FlawLimitsReceipt = receipt(
  'FlawLimitsReceipt',
  z.object({ level: Level.nullable(), ownRows: z.number() }),
);

export const FlawLimitsView = z
  .object({
    level: Level.nullable(),
    rows: z.array(FlawRow).describe('the table that is judged by now; each row says how sure its numbers are'),
    note: z.string(),
    history: z.array(
      z.object({ id: z.uuid(), from: Instant, level: Level.nullable(), ownRows: z.number(), reason: z.string() }),
    ),
  })
  .meta({ id: 'FlawLimitsView' });
export type FlawLimitsView = z.output<typeof FlawLimitsView>;
