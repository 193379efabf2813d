import { z } from 'zod';
import { Amount, AmountView, Decimal, Unit } from './amount.js';
import { Meanwhile } from './lots.js';
import { HoldScopeFields } from './holds.js';
import { Code, Day, Envelope, Instant, NewCode, PageQuery, Text, page, receipt } from './envelope.js';

const Certificate = z.record(z.string().max(80), z.union([z.string().max(400), z.number()]));

/** Labels containers of a lot: each drum, tote, pail, roll or sheet has its own label. */
export const LabelContainers = Envelope.extend({
  containers: z
    .array(
      z.object({
        label: NewCode,
        kind: z.enum(['drum', 'tote', 'pail', 'bag', 'box', 'roll', 'sheet']),
        amount: Amount,
        place: Text.optional(),
      }),
    )
    .min(1)
    .max(200),
}).meta({ id: 'LabelContainers' });
export type LabelContainers = z.output<typeof LabelContainers>;
export const LabelsReceipt = receipt('LabelsReceipt', z.object({ labels: z.array(z.string()), kg: z.number() }));
export type LabelsReceipt = z.output<typeof LabelsReceipt>;

/** Says what became of a container. Returned to stock partly used, it is the same container; count what is left in it. */
export const TellContainer = Envelope.extend({
  what: z.enum(['moved', 'opened', 'returned to stock', 'emptied', 'rejected', 'accepted']),
  place: Text.optional().describe('where it stands then; required for "moved" and "returned to stock"'),
  note: Text.optional(),
})
  .refine(({ what, place }) => place !== undefined || (what !== 'moved' && what !== 'returned to stock'), {
    path: ['place'],
    message: 'say where it stands',
  })
  .meta({ id: 'TellContainer' });
export type TellContainer = z.output<typeof TellContainer>;
export const ContainerReceipt = receipt('ContainerReceipt', z.object({ what: z.string(), nonconformities: Meanwhile }));
export type ContainerReceipt = z.output<typeof ContainerReceipt>;

/** Holds a lot, or one container of it, from `happenedAt` on. */
export const PlaceHold = Envelope.extend({
  kind: z.enum(['quality', 'safety']).describe('nobody goes on over a safety hold, and quality alone lifts it'),
  reason: Text,
  container: Code.optional(),
  ...HoldScopeFields,
}).meta({ id: 'PlaceHold' });
export type PlaceHold = z.output<typeof PlaceHold>;

export const LiftHold = Envelope.extend({ reason: Text }).meta({ id: 'LiftHold' });
export type LiftHold = z.output<typeof LiftHold>;
export const LiftReceipt = receipt('LiftReceipt', z.object({ lifted: z.literal(true) }));
export type LiftReceipt = z.output<typeof LiftReceipt>;

/** Material of a lot that was lost to use. */
export const BookLoss = Envelope.extend({
  what: z.enum(['scrapped', 'purged', 'line flushed', 'spilled', 'sample retained', 'returned to supplier']),
  amount: Amount,
  reason: Text,
  container: Code.optional(),
  place: Text.optional().describe('where a sample is kept'),
}).meta({ id: 'BookLoss' });
export type BookLoss = z.output<typeof BookLoss>;
export const LossReceipt = receipt('LossReceipt', z.object({ what: z.string(), kg: z.number() }));
export type LossReceipt = z.output<typeof LossReceipt>;

/** What was really there when somebody counted: of a lot, or of one container. */
export const CountLot = Envelope.extend({
  quantity: Decimal.refine((text) => Number(text) >= 0, 'must not be less than zero'),
  unit: Unit,
  container: Code.optional(),
  note: Text.optional(),
}).meta({ id: 'CountLot' });
export type CountLot = z.output<typeof CountLot>;
export const CountReceipt = receipt(
  'CountReceipt',
  z.object({
    kg: z.number(),
    differenceKg: z.number().nullable().describe('more (or less, negative) than the book said; null for a container'),
  }),
);
export type CountReceipt = z.output<typeof CountReceipt>;

/** A retest by quality gives a lot another last day of use, from then on. */
export const RetestLot = Envelope.extend({ expiresOn: Day, certificate: Certificate.default({}), result: Text }).meta({
  id: 'RetestLot',
});
export type RetestLot = z.output<typeof RetestLot>;
export const RetestReceipt = receipt('RetestReceipt', z.object({ expiresOn: Day, nonconformities: Meanwhile }));
export type RetestReceipt = z.output<typeof RetestReceipt>;

export const ContainerView = z
  .object({
    id: z.uuid(),
    label: z.string(),
    lot: z.string(),
    kind: z.string(),
    amount: AmountView,
    place: z.string().nullable(),
    openedAt: Instant.nullable(),
    rejected: z.boolean(),
    holds: z.array(z.string()),
    leftKg: z.number().describe('kg by the book, of what named this container'),
    history: z.array(
      z.object({
        id: z.uuid(),
        what: z.string(),
        place: z.string().nullable(),
        note: z.string().nullable(),
        happenedAt: Instant,
      }),
    ),
  })
  .meta({ id: 'ContainerView' });
export type ContainerView = z.output<typeof ContainerView>;

const amount = z.object({ quantity: z.string(), unit: z.string(), kg: z.number() });
const told = { id: z.uuid(), happenedAt: Instant };

export const StoreOfLot = z
  .object({
    id: z.uuid(),
    lot: z.string(),
    containers: z.array(ContainerView),
    holds: z.array(
      z.object({
        ...told,
        kind: z.string(),
        reason: z.string(),
        container: z.string().nullable(),
        lifted: z.object({ id: z.uuid(), reason: z.string(), happenedAt: Instant }).nullable(),
      }),
    ),
    losses: z.array(
      z.object({
        ...told,
        what: z.string(),
        reason: z.string(),
        place: z.string().nullable(),
        container: z.string().nullable(),
        amount,
      }),
    ),
    counts: z.array(z.object({ ...told, note: z.string().nullable(), container: z.string().nullable(), amount })),
    retests: z.array(z.object({ ...told, expiresOn: Day, result: z.string(), certificate: Certificate })),
    photos: z
      .array(
        z.object({
          ...told,
          originalSha256: z.string(),
          redactedOn: Day.nullable().describe('day on which areas of it were blacked out'),
        }),
      )
      .describe('of its certificate'),
  })
  .meta({ id: 'StoreOfLot' });
export type StoreOfLot = z.output<typeof StoreOfLot>;

/** An account of every kilogram of a lot. received = used + put into + lost + left - difference. */
export const LotBalance = z
  .object({
    lot: z.string(),
    lossAllowance: z.number().nullable(),
    receivedKg: z.number(),
    usedKg: z.number(),
    putIntoKg: z.number(),
    lostKg: z.number(),
    differenceKg: z.number().describe('what counts found more (or less, negative) than the book'),
    leftKg: z.number(),
    basis: z.string().describe('the weakest basis of any line'),
    verdict: z.string(),
    lines: z.array(
      z.object({
        kind: z.string(),
        what: z.string(),
        happenedAt: Instant,
        changeKg: z.number(),
        leftKg: z.number(),
        basis: z.string().nullable().describe('how the kilograms are known; null for a count'),
      }),
    ),
  })
  .meta({ id: 'LotBalance' });
export type LotBalance = z.output<typeof LotBalance>;

export const BalancesQuery = PageQuery.extend({ material: Code.optional() });
export type BalancesQuery = z.output<typeof BalancesQuery>;
export const LotOutOfBalance = z
  .object({
    lot: z.string(),
    lotId: z.uuid(),
    material: z.string().nullable(),
    receivedKg: z.number(),
    takenKg: z.number(),
    lostKg: z.number(),
    differenceKg: z.number(),
    leftKg: z.number(),
    basis: z.string().describe('the weakest basis of what came, was used or was lost'),
    lossAllowance: z.number().nullable(),
    verdict: z.string(),
  })
  .meta({ id: 'LotOutOfBalance' });
export type LotOutOfBalance = z.output<typeof LotOutOfBalance>;
export const BalancePage = page('BalancePage', LotOutOfBalance);
export type BalancePage = z.output<typeof BalancePage>;

export const StockItem = z
  .object({
    lot: z.string(),
    lotId: z.uuid(),
    supplierLot: z.string().nullable(),
    expiresOn: Day.nullable(),
    receivedAt: Instant,
    state: z.string(),
    holds: z.array(z.string()),
    expired: z.boolean(),
    leftKg: z.number(),
    usable: z.boolean(),
    containers: z
      .array(
        z.object({ label: z.string(), place: z.string().nullable(), openedAt: Instant.nullable(), leftKg: z.number() }),
      )
      .describe('that are neither empty nor rejected nor on hold; open ones first'),
  })
  .meta({ id: 'StockItem' });
export type StockItem = z.output<typeof StockItem>;
