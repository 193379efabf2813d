import { z } from 'zod';
import { Code, Day, Envelope, Instant, Text, receipt } from './envelope.js';
import { Place } from './place.js';
import { VerdictView } from './verdicts.js';

const size = z.number().positive().max(20_000);

export const ReportDefect = Envelope.extend({
  kind: Code.describe('see GET /api/defect-kinds'),
  layer: Code.optional().describe('code of the layer, when it is known'),
  place: Place,
  lengthMm: size.optional(),
  widthMm: size.optional(),
  depthMm: size.optional(),
  grade: z.string().max(4).optional().describe('blisters: ASTM D714 grade, such as 6M; 10 is none'),
  counted: z.number().int().positive().max(100_000).optional().describe('how many there are in the area counted'),
  countedAreaM2: z.number().positive().max(1_000).optional().describe('m2 in which they were counted'),
  note: Text.optional(),
})
  .refine((defect) => (defect.counted === undefined) === (defect.countedAreaM2 === undefined), {
    path: ['countedAreaM2'],
    message: 'a count needs the area it was counted in, and the area a count',
  })
  .meta({ id: 'ReportDefect' });
export type ReportDefect = z.output<typeof ReportDefect>;

export const AddPhoto = Envelope.meta({ id: 'AddPhoto' });
export type AddPhoto = z.output<typeof AddPhoto>;

export const DISPOSITIONS = ['use as is', 'rework', 'repair', 'scrap'] as const;

/** Says what is done about something that is not as it should be (ISO 9000). Use as is needs a concession. */
export const Dispose = Envelope.extend({
  of: z.enum(['defect', 'reading', 'nonconformity', 'equipment check']),
  about: z.uuid(),
  disposition: z.enum(DISPOSITIONS),
  concession: Code.optional().describe('number of the concession; required for "use as is"'),
  reason: Text,
})
  .refine((decision) => decision.disposition !== 'use as is' || decision.concession !== undefined, {
    path: ['concession'],
    message: 'use as is needs the number of a concession',
  })
  .meta({ id: 'Dispose' });
export type Dispose = z.output<typeof Dispose>;

export const DefectReceipt = receipt(
  'DefectReceipt',
  z.object({
    mark: z.string(),
    percentOfLength: z.number().nullable(),
    zone: z.string(),
    asks: z.array(z.string()).describe('what it asks for at once'),
  }),
);
export type DefectReceipt = z.output<typeof DefectReceipt>;

export const PhotoReceipt = receipt(
  'PhotoReceipt',
  z.object({ originalSha256: z.string(), width: z.number(), height: z.number() }),
);
export type PhotoReceipt = z.output<typeof PhotoReceipt>;

export const DispositionReceipt = receipt('DispositionReceipt', z.object({ disposition: z.string() }));
export type DispositionReceipt = z.output<typeof DispositionReceipt>;

export const DefectView = z
  .object({
    id: z.uuid(),
    mark: z.string().describe('number of the defect on its part: D1, D2 ...'),
    part: z.string(),
    layer: z.string().nullable(),
    kind: z.string(),
    place: Place,
    percentOfLength: z.number().nullable(),
    zone: z.string(),
    lengthMm: z.number().nullable(),
    widthMm: z.number().nullable(),
    depthMm: z.number().nullable(),
    grade: z.string().nullable(),
    iso4628: z
      .object({ grade: z.string(), source: z.string() })
      .nullable()
      .describe('the grade of ISO 4628-2 that corresponds, for reading old reports'),
    counted: z.number().nullable(),
    countedAreaM2: z.number().nullable(),
    perM2: z.number().nullable(),
    verdicts: z.array(VerdictView),
    note: z.string().nullable(),
    photos: z.array(
      z.object({
        id: z.uuid(),
        originalSha256: z.string(),
        redactedOn: Day.nullable().describe('day on which areas of it were blacked out'),
      }),
    ),
    state: z.enum(['open', 'repair to be accepted', 'repaired', 'concession', 'scrapped']),
    disposition: z.string().nullable(),
    concession: z.string().nullable(),
    repairs: z.array(z.string()),
    asks: z.array(z.string()).describe('what it still asks for'),
    bucketOrGun: z.string().nullable(),
    happenedAt: Instant,
    by: z.string(),
  })
  .meta({ id: 'DefectView' });
export type DefectView = z.output<typeof DefectView>;

export const DefectKindView = z
  .object({ code: z.string(), label: z.string(), source: z.string() })
  .meta({ id: 'DefectKindView' });
