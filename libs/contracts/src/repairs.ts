import { z } from 'zod';
import { AmountView, Taken } from './amount.js';
import { Code, Day, Envelope, Instant, Nonconformity, Text, receipt } from './envelope.js';
import { ReadingView } from './readings.js';
import { VerdictView } from './verdicts.js';

const mm = z.number().positive().max(20_000);

/** What a picture of an outside repair shows. */
export const REPAIR_PHOTOS = ['before', 'ground out', 'laid up', 'finished', 'other'] as const;

/** A structural repair as planned or done, mm. It is judged: taper, and the patch against what it replaces. */
export const RepairGeometry = z
  .object({
    originalMm: mm.describe('thickness of the laminate; of a cored panel, of the skin'),
    damageDepthMm: mm.describe('how deep the damage is ground out'),
    taperMm: z.number().min(0).max(20_000).describe('length of the taper'),
    patchMm: mm.describe('thickness of the patch as laid up'),
    skin: z.enum(['outer', 'inner']).optional().describe('of a cored panel: each skin is tapered for itself'),
    sides: z.enum(['one', 'both']).optional().describe('through damage tapered from one side, or half from each'),
  })
  .refine(({ damageDepthMm, originalMm }) => damageDepthMm <= originalMm, {
    path: ['damageDepthMm'],
    message: 'must not be more than originalMm: of a cored panel record each skin for itself',
  })
  .meta({ id: 'RepairGeometry' });
export type RepairGeometry = z.output<typeof RepairGeometry>;

/** What is known of a repair that was done elsewhere. */
export const OutsideRepair = z
  .object({
    at: Text.describe('yard or dealer, and place'),
    toldBy: Text.describe('from whom it is known, such as an invoice or a surveyor'),
    when: Text.optional().describe('when it was done, as far as it is known'),
    material: Text.optional().describe('material as told, when no lot of ours is known'),
    evidence: Text.optional().describe('photos, invoice, survey'),
  })
  .meta({ id: 'OutsideRepair' });
export type OutsideRepair = z.output<typeof OutsideRepair>;

/** What was done, of every repair. */
export const RepairWork = {
  procedure: Text,
  taperRatio: z
    .number()
    .positive()
    .max(100)
    .optional()
    .describe('length of taper per unit of thickness, such as 12 for 12:1'),
  grindOutMm: z.object({ lengthMm: mm, widthMm: mm, depthMm: mm }).optional(),
  geometry: RepairGeometry.optional().describe('of a structural repair; it is judged'),
  plies: z.array(Text).max(40).default([]),
};

/** A repair as it was done. Ask the data sheet, local codes and licensed or certified practice before structural work. */
export const RecordRepair = Envelope.extend({
  defects: z.array(z.uuid()).min(1).max(60),
  ...RepairWork,
  doneBy: z.array(Code).max(40).default([]).describe('badges; of an outside repair none'),
  outside: OutsideRepair.optional().describe('of a repair that was done at a yard or dealer'),
  used: z.array(Taken).max(100).default([]),
})
  .refine((repair) => (repair.outside === undefined) === repair.doneBy.length > 0, {
    path: ['doneBy'],
    message: 'name who did it here; or, of an outside repair, nobody',
  })
  .meta({ id: 'RecordRepair' });
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
    geometry: RepairGeometry.nullable(),
    verdicts: z.array(VerdictView),
    plies: z.array(z.string()),
    doneBy: z.array(z.string()),
    outside: OutsideRepair.nullable().describe('the plant did not witness it'),
    reportedBy: z.string().nullable().describe('of an outside repair: code of the dealer who reported it'),
    note: z.string().nullable(),
    photos: z.array(
      z.object({
        id: z.uuid(),
        shows: z.enum(REPAIR_PHOTOS),
        originalSha256: z.string(),
        redactedOn: Day.nullable().describe('day on which areas of it were blacked out'),
      }),
    ),
    reInspections: z.array(z.object({ passed: z.boolean(), by: z.string(), at: Instant, note: z.string().nullable() })),
    used: z.array(z.object({ id: z.uuid(), lot: z.string(), lotId: z.uuid(), amount: AmountView })),
    readings: z.array(ReadingView),
    acceptance: z
      .object({ accepted: z.boolean(), by: z.string(), at: Instant, note: z.string().nullable(), identity: z.string() })
      .nullable(),
    happenedAt: Instant,
  })
  .meta({ id: 'RepairView' });
export type RepairView = z.output<typeof RepairView>;
