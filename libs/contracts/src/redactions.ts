import { z } from 'zod';
import { Day, Envelope, Instant, receipt, Text } from './envelope.js';

const NoNames = Text.describe('no personal data here: it is kept in the journal for good');

/** Facts whose freely written text may name an owner, and the field it stands in. */
export const FREE_TEXT_KINDS = ['claim', 'claim decision', 'claim mark', 'defect', 'repair', 'life fact'] as const;

export const ORIGINALS = ['erased', 'kept apart', 'in the journal'] as const;
const Original = z
  .enum(ORIGINALS)
  .describe(
    'erased; kept apart while a legal hold or the day until which the record is kept stands against it; or in the journal, for it was recorded before texts lay apart and cannot be taken out',
  );

/** Gives a freely written text another wording, which is shown in its place from then on. */
export const RedactText = Envelope.extend({
  kind: z.enum(FREE_TEXT_KINDS),
  of: z.uuid().describe('the fact that the text is of'),
  wording: NoNames,
  reason: NoNames,
}).meta({ id: 'RedactText' });
export type RedactText = z.output<typeof RedactText>;
export const TextRedactedReceipt = receipt(
  'TextRedactedReceipt',
  z.object({ original: Original, keptBecause: z.string().nullable() }),
);

const fraction = z.number().min(0).max(1);

/** An area of a photo that is blacked out, in fractions of its width and height from the top left corner. */
export const Area = z
  .object({ x: fraction, y: fraction, width: fraction.positive(), height: fraction.positive() })
  .meta({ id: 'Area' });
export type Area = z.output<typeof Area>;

/** Blacks out areas of a photo, for good: the copy that is shown from then on is made of the one shown before. */
export const RedactPhoto = Envelope.extend({
  areas: z.array(Area).max(40).describe('none: only to erase the original of a photo that is redacted already'),
  reason: NoNames,
}).meta({ id: 'RedactPhoto' });
export type RedactPhoto = z.output<typeof RedactPhoto>;
export const PhotoRedactedReceipt = receipt(
  'PhotoRedactedReceipt',
  z.object({
    original: z.enum(['erased', 'kept apart']),
    keptBecause: z.string().nullable(),
    alsoShownAs: z.array(z.uuid()).describe('other photos of the same picture, which show it still'),
  }),
);

const redacted = z
  .object({ at: Instant, by: z.string(), reason: z.string(), original: Original })
  .nullable()
  .describe('null: it is shown as it came');

/** The texts and photos of a hull that may show or name somebody. */
export const Redactable = z
  .object({
    keptUntil: Day.nullable(),
    keptBecause: z.string().nullable().describe('null: an original is erased at once'),
    texts: z.array(
      z.object({
        kind: z.enum(FREE_TEXT_KINDS),
        of: z.uuid(),
        mark: z.string().describe('of the claim or defect, or what happened'),
        text: z.string().describe('as it is shown'),
        original: z.string().nullable().describe('what is kept apart; for warranty and administrator alone'),
        at: Instant,
        erasable: z.boolean().describe('false: it stands in the journal, and cannot be taken out there'),
        redacted,
      }),
    ),
    photos: z.array(
      z.object({ id: z.uuid(), mark: z.string(), width: z.number(), height: z.number(), at: Instant, redacted }),
    ),
  })
  .meta({ id: 'Redactable' });
export type Redactable = z.output<typeof Redactable>;
