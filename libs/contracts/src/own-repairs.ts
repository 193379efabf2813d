import { z } from 'zod';
import { Code, Day, Envelope, Instant, Nonconformity, Text, receipt } from './envelope.js';
import { COUNTED, isCounted, SPOT } from './claims.js';
import { Skin } from './models.js';
import { Place } from './place.js';
import { OutsideRepair, REPAIR_PHOTOS, RepairWork } from './repairs.js';

/** A spot that was repaired and that is no defect on record yet; it becomes one. */
export const RepairedSpot = z
  .object({
    kind: Code.describe('what it was: see GET /api/defect-kinds'),
    grade: z.string().max(4).optional().describe('blisters: ASTM D714 grade, such as 6M'),
    ...SPOT,
  })
  .refine(isCounted, COUNTED)
  .meta({ id: 'RepairedSpot' });
export type RepairedSpot = z.output<typeof RepairedSpot>;

/** Where an own hull was repaired, and from whom that is known. No names of persons: it is kept in the journal. */
export const OwnOutsideRepair = OutsideRepair.omit({ when: true })
  .extend({ doneOn: Day.describe('day on which it was finished') })
  .meta({ id: 'OwnOutsideRepair' });
export type OwnOutsideRepair = z.output<typeof OwnOutsideRepair>;

/**
 * Reports, as the dealer of a hull, a repair that was done outside the plant. The plant did not witness it, and judges
 * it afterwards. Ask the data sheet, local codes and licensed or certified practice before structural work.
 */
export const ReportOwnRepair = Envelope.extend({
  part: Code.optional().describe('default: the hull molding'),
  defects: z.array(z.uuid()).max(60).default([]).describe('defects of the part that it answers'),
  spots: z.array(RepairedSpot).max(60).default([]).describe('what it answers and nobody reported yet'),
  ...RepairWork,
  outside: OwnOutsideRepair,
  note: Text.optional().describe('kept apart from the journal, so that it can be redacted'),
})
  .refine(({ defects, spots }) => defects.length + spots.length > 0, {
    path: ['defects'],
    message: 'name a defect that it answers, or a spot',
  })
  .meta({ id: 'ReportOwnRepair' });
export type ReportOwnRepair = z.output<typeof ReportOwnRepair>;

export const OwnRepairReceipt = receipt(
  'OwnRepairReceipt',
  z.object({
    mark: z.string().describe('R1, R2 ... of its part'),
    part: z.string(),
    defects: z.array(z.string()).describe('marks of the defects that its spots became'),
    nonconformities: z.array(Nonconformity),
    warnings: z.array(z.string()),
  }),
);
export type OwnRepairReceipt = z.output<typeof OwnRepairReceipt>;

export const AddOwnRepairPhoto = Envelope.extend({ shows: z.enum(REPAIR_PHOTOS) }).meta({ id: 'AddOwnRepairPhoto' });
export type AddOwnRepairPhoto = z.output<typeof AddOwnRepairPhoto>;

export const OWN_REPAIR_STATES = ['to be judged', 'accepted', 'refused', 'failed when inspected again'] as const;

/** An outside repair as a dealer of the hull sees it. What another told of it freely is left out. */
export const OwnRepair = z
  .object({
    id: z.uuid(),
    mark: z.string(),
    part: z.string(),
    own: z.boolean().describe('whether you reported it'),
    defects: z.array(z.string()).describe('marks of the defects that it answers'),
    procedure: z.string(),
    taperRatio: z.number().nullable(),
    grindOutMm: z.object({ lengthMm: z.number(), widthMm: z.number(), depthMm: z.number() }).nullable(),
    plies: z.array(z.string()),
    at: z.string(),
    when: z.string().nullable(),
    material: z.string().nullable(),
    toldBy: z.string().nullable(),
    evidence: z.string().nullable(),
    note: z.string().nullable(),
    state: z.enum(OWN_REPAIR_STATES).describe('what quality of the plant said last'),
    photos: z.array(z.object({ id: z.uuid(), shows: z.enum(REPAIR_PHOTOS), redactedOn: Day.nullable() })),
    reportedAt: Instant,
  })
  .meta({ id: 'OwnRepair' });
export type OwnRepair = z.output<typeof OwnRepair>;

/** Outside repairs of an own hull, and the parts and open defects that one can be reported of. */
export const OwnRepairs = z
  .object({
    repairs: z.array(OwnRepair),
    parts: z.array(
      z.object({ number: z.string(), kind: z.string(), skin: Skin.nullable().describe('null: no hull map of it') }),
    ),
    openDefects: z.array(
      z.object({
        id: z.uuid(),
        mark: z.string(),
        part: z.string(),
        kind: z.string(),
        place: Place,
        zone: z.string(),
        state: z.enum(['open', 'repair to be accepted']),
      }),
    ),
  })
  .meta({ id: 'OwnRepairs' });
export type OwnRepairs = z.output<typeof OwnRepairs>;
