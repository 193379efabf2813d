import { z } from 'zod';
import { Amount, AmountView, Taken } from './amount.js';
import { MakerData } from './materials.js';
import { ReadingView } from './readings.js';
import { VerdictView } from './verdicts.js';
import { recomputing } from './recomputations.js';
import { Code, Day, Envelope, Instant, NewCode, Nonconformity, PageQuery, Text, page, receipt } from './envelope.js';

export const LOT_STATES = ['quarantined', 'released', 'held', 'rejected'] as const;
export const ORIGINS = ['received', 'mixed', 'tank', 'cut', 'unidentified'] as const;

const Certified = MakerData.omit({ dataSheet: true, dosing: true });

export const ReceiveLot = Envelope.extend({
  code: NewCode.describe('our own code for the lot, as on its label'),
  material: Code,
  supplier: Text,
  supplierLot: Text.describe("the supplier's lot number"),
  amount: Amount,
  madeOn: Day.optional(),
  expiresOn: Day.optional().describe("last day of use; when absent, made on plus the material's shelf life"),
  certificate: z
    .record(z.string().max(80), z.union([z.string().max(400), z.number()]))
    .default({})
    .describe('values as on the certificate'),
  certified: Certified.optional().describe(
    'limits that the certificate of this lot names: they stand above the data sheet',
  ),
  state: z.enum(['quarantined', 'released']).default('quarantined'),
})
  .refine((lot) => !lot.madeOn || !lot.expiresOn || lot.madeOn <= lot.expiresOn, {
    path: ['expiresOn'],
    message: 'must not be before madeOn',
  })
  .meta({ id: 'ReceiveLot' });
export type ReceiveLot = z.output<typeof ReceiveLot>;

export const ChangeLotState = Envelope.extend({ state: z.enum(LOT_STATES), reason: Text }).meta({
  id: 'ChangeLotState',
});
export type ChangeLotState = z.output<typeof ChangeLotState>;

/** Adds a photo of material that nobody could name to what an entry kept of it; of several parts, to that of each. */
export const AddUnidentifiedPhoto = Envelope.extend({
  line: z.number().int().min(0).max(999).describe('which line of what the entry used, from 0'),
}).meta({ id: 'AddUnidentifiedPhoto' });
export type AddUnidentifiedPhoto = z.output<typeof AddUnidentifiedPhoto>;

/** Says which lot unidentified material was; everything drawn of it is then of that lot. */
export const IdentifyLot = Envelope.extend({ as: Code.describe('the lot it really was'), reason: Text }).meta({
  id: 'IdentifyLot',
});
export type IdentifyLot = z.output<typeof IdentifyLot>;
export const IdentificationReceipt = receipt(
  'IdentificationReceipt',
  z.object({ draws: z.number().describe('how many uses and inputs were corrected') }),
);
export type IdentificationReceipt = z.output<typeof IdentificationReceipt>;

const Inputs = z.array(Taken).min(1).max(200).describe('what it is made of, in the order in which it went in');

/** A bucket: what was mixed, of which lots. */
export const MakeMix = Envelope.extend({ code: NewCode, inputs: Inputs }).meta({ id: 'MakeMix' });
export type MakeMix = z.output<typeof MakeMix>;

/** A kit cut from rolls and sheets. */
export const CutKit = Envelope.extend({ code: NewCode, inputs: Inputs }).meta({ id: 'CutKit' });
export type CutKit = z.output<typeof CutKit>;

/** A fill of a bulk tank. The heel is measured before it (dip, gauge or scale); what differs from the book is kept. */
export const FillTank = Envelope.extend({
  code: NewCode.describe('code of the lot that the tank now holds'),
  heel: Amount.nullable().describe('what was measured in the tank before the fill; null when it was empty'),
  inputs: Inputs,
}).meta({ id: 'FillTank' });
export type FillTank = z.output<typeof FillTank>;

export const LotReceipt = receipt(
  'LotReceipt',
  z.object({
    code: z.string(),
    kg: z.number(),
    nonconformities: z.array(Nonconformity),
    warnings: z.array(z.string()),
  }),
);
export type LotReceipt = z.output<typeof LotReceipt>;

/** What was used meanwhile, when something is said late. */
export const Meanwhile = z.array(Nonconformity).describe('what was used meanwhile');
export const LotStateReceipt = receipt('LotStateReceipt', z.object({ state: z.string(), nonconformities: Meanwhile }));
export type LotStateReceipt = z.output<typeof LotStateReceipt>;

export const ListLotsQuery = PageQuery.extend({
  material: Code.optional(),
  state: z.enum(LOT_STATES).optional(),
  origin: z.enum(ORIGINS).optional(),
  search: z.string().trim().max(80).optional().describe("part of the code or of the supplier's lot number"),
});
export type ListLotsQuery = z.output<typeof ListLotsQuery>;

const lotFields = {
  id: z.uuid(),
  code: z.string(),
  origin: z.enum(ORIGINS),
  material: z.string().nullable(),
  materialName: z.string().nullable(),
  role: z.string().nullable(),
  supplier: z.string().nullable(),
  supplierLot: z.string().nullable(),
  amount: AmountView,
  madeOn: Day.nullable(),
  expiresOn: Day.nullable(),
  state: z.enum(LOT_STATES),
  holds: z.array(z.string()).describe('kinds of the holds in force on all of it: whatever its state, it is not used'),
  happenedAt: Instant,
  recordedAt: Instant,
};

export const LotListItem = z.object(lotFields).meta({ id: 'LotListItem' });
export type LotListItem = z.output<typeof LotListItem>;
export const LotPage = page('LotPage', LotListItem);
export type LotPage = z.output<typeof LotPage>;

export const LotInputView = z
  .object({ id: z.uuid(), lot: z.string(), lotId: z.uuid(), amount: AmountView })
  .meta({ id: 'LotInputView' });

export const LotView = z
  .object({
    ...lotFields,
    certificate: z.record(z.string(), z.union([z.string(), z.number()])),
    certified: Certified.nullable(),
    tank: z.string().nullable(),
    inputs: z.array(LotInputView),
    composition: z
      .array(
        z.object({
          source: z.string().nullable().describe('null: the remainder below one part in a thousand million'),
          role: z.string(),
          fraction: z.number(),
        }),
      )
      .describe('mass fractions of received lots; they sum to 1. Assumes a well-mixed tank.'),
    recomputing,
    verdicts: z.array(VerdictView),
    readings: z.array(ReadingView),
    states: z.array(z.object({ state: z.string(), reason: z.string(), happenedAt: Instant })),
    usedKg: z.number().describe('kg put into layers, joints, repairs or other lots'),
    adjustedKg: z
      .number()
      .describe(
        'kg by which the newest count, or the heel before the next fill, differs from the book; negative is a loss',
      ),
    lostKg: z.number().describe('kg scrapped, purged, flushed, spilled, kept as samples, sent back'),
    leftKg: z.number().describe('kg left by the book; negative is an overdraw, which asks for a count'),
  })
  .meta({ id: 'LotView' });
export type LotView = z.output<typeof LotView>;
