import { z } from 'zod';

/** A code that a person types or scans: badge, device, lot, part, mold ... */
export const Code = z
  .string()
  .trim()
  .min(1)
  .max(60)
  .refine((code) => !/[\p{Cc}\p{Cf}]/u.test(code), 'has a character that is not seen: write it without')
  .refine((code) => !/^\.+$/.test(code), 'must have a letter or a digit')
  .describe('a code that is typed or scanned');

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/** A code given to something new. It does not look like an id, so that the two are never taken for each other. */
export const NewCode = Code.refine((code) => !UUID.test(code), 'looks like an id: choose another code');

const inOurTime = (text: string): boolean => text >= '1900';

export const Instant = z.iso
  .datetime({ offset: true, abort: true })
  .refine(inOurTime, 'must be a year from 1900 on')
  .describe('instant with offset, ISO 8601');
export const Day = z.iso
  .date({ abort: true })
  .refine(inOurTime, 'must be a year from 1900 on')
  .describe('calendar day, YYYY-MM-DD');
export const Text = z.string().trim().min(1).max(2_000);

/**
 * What every record carries: the id its maker gave it, who enters it on which device, and when it happened.
 *
 * The same id with the same body records nothing more and answers as the first time;
 * the same id with another body is refused.
 */
export const Envelope = z.object({
  id: z.uuid().describe('made by the client; the id of the fact, so that a retry is the same request'),
  enteredBy: Code.describe('badge of the person who enters this'),
  device: Code.describe('code of the device on which it is entered'),
  happenedAt: Instant.describe('when it happened; not later than now'),
  station: Code.optional().describe('where in the shop it was entered'),
  enteredAt: Instant.optional().describe('when it was entered, for what waited on a device; not later than now'),
  clockOffsetMs: z
    .number()
    .int()
    .min(-1e13)
    .max(1e13)
    .optional()
    .describe(
      'ms that the device added to its own clock to tell these times, as it last compared it; kept with the fact',
    ),
});
export type Envelope = z.output<typeof Envelope>;

/** Says that a record is kept: answered 201 when it is new, 200 when the same request came before. */
export const receipt = <T extends z.ZodType>(name: string, result: T) =>
  z
    .object({
      id: z.uuid(),
      recordedAt: Instant,
      replayed: z.boolean().describe('true when this request had been recorded before'),
      result,
    })
    .meta({ id: name });

/** A page of a list in a stable order; `next` is the cursor of the following page. */
export const page = <T extends z.ZodType>(name: string, item: T) =>
  z.object({ items: z.array(item), next: z.string().nullable() }).meta({ id: name });

export const PageQuery = z.object({
  limit: z.coerce.number().int().min(1).max(500).default(100),
  cursor: z.string().max(400).optional().describe('`next` of the page before'),
});
export type PageQuery = z.output<typeof PageQuery>;

export const Nonconformity = z
  .object({ id: z.uuid(), rule: z.string(), detail: z.string() })
  .meta({ id: 'Nonconformity' });
export type Nonconformity = z.output<typeof Nonconformity>;
