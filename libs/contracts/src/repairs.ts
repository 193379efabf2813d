import { z } from 'zod';
import { AmountView, Taken } from './amount.js';
import { Code, Envelope, Instant, Nonconformity, Text, receipt } from './envelope.js';
import { ReadingView } from './readings.js';

const mm = z.number().positive().max(20_000);

/** A repair as it was done. Ask the data sheet, local codes and licensed or certified practice before structural work. */
export const RecordRepair = Envelope.extend({
  defects: z.array(z.uuid()).min(1).max(60),
  procedure: Text,
  taperRatio: z
    .number()
    .positive()
    .max(100)
    .optional()
    .describe('length of taper per unit of thickness, such as 12 for 12:1'),
  grindOutMm: z.object({ lengthMm: mm, widthMm: mm, depthMm: mm }).optional(),
  plies: z.array(Text).max(40).default([]),
  doneBy: z.array(Code).min(1).max(40),
  used: z.array(Taken).max(100).default([]),
}).meta({ id: 'RecordRepair' });
export type RecordRepair = z.output<typeof RecordRepair>;

/** The one who enters this accepts or refuses the repair; it must be someone who did not do it. */
export const JudgeRepair = Envelope.extend({ accepted: z.boolean(), note: Text.optional() })
  .refine((judgement) => judgement.accepted || judgement.note !== undefined, {
    path: ['note'],
    message: 'say why it is refused',
  })
  .meta({ id: 'JudgeRepair' });
export type JudgeRepair = z.output<typeof JudgeRepair>;

export const RepairReceipt = receipt(
  'RepairReceipt',
  z.object({
    mark: z.string(),
    kg: z.number(),
    nonconformities: z.array(Nonconformity),
    warnings: z.array(z.string()),
  }),
);
export type RepairReceipt = z.output<typeof RepairReceipt>;
export const AcceptanceReceipt = receipt('AcceptanceReceipt', z.object({ accepted: z.boolean() }));
export type AcceptanceReceipt = z.output<typeof AcceptanceReceipt>;

export const RepairView = z
  .object({
    id: z.uuid(),
    mark: z.string().describe('number of the repair on its part: R1, R2 ...'),
    defects: z.array(z.string()).describe('marks of the defects'),
    procedure: z.string(),
    taperRatio: z.number().nullable(),
    grindOutMm: z.object({ lengthMm: z.number(), widthMm: z.number(), depthMm: z.number() }).nullable(),
    plies: z.array(z.string()),
    doneBy: z.array(z.string()),
    used: z.array(z.object({ id: z.uuid(), lot: z.string(), lotId: z.uuid(), amount: AmountView })),
    readings: z.array(ReadingView),
    acceptance: z
      .object({ accepted: z.boolean(), by: z.string(), at: Instant, note: z.string().nullable(), identity: z.string() })
      .nullable(),
    happenedAt: Instant,
  })
  .meta({ id: 'RepairView' });
export type RepairView = z.output<typeof RepairView>;
