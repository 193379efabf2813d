import { z } from 'zod';
import { Code, Envelope, Instant, Nonconformity, Text, receipt } from './envelope.js';

const line = z.string().trim().min(1).max(400);

/** Personal data of an owner: kept apart from the record, and erased on request. */
export const OwnerDetail = z
  .object({ name: line, address: line.optional(), email: z.email().max(320).optional(), phone: line.optional() })
  .meta({ id: 'OwnerDetail' });
export type OwnerDetail = z.output<typeof OwnerDetail>;

export const RegisterOwner = Envelope.extend({
  what: z.enum(['first purchaser', 'later owner']),
  owner: OwnerDetail,
}).meta({ id: 'RegisterOwner' });
export type RegisterOwner = z.output<typeof RegisterOwner>;
export const OwnerReceipt = receipt('OwnerReceipt', z.object({ what: z.string() }));
export type OwnerReceipt = z.output<typeof OwnerReceipt>;

export const EraseOwner = Envelope.extend({ reason: Text.describe('no personal data here') }).meta({
  id: 'EraseOwner',
});
export type EraseOwner = z.output<typeof EraseOwner>;
export const ErasureReceipt = receipt(
  'ErasureReceipt',
  z.object({
    erased: z.boolean().describe('false: something keeps the data, and it was narrowed to what that needs'),
    narrowed: z.array(z.string()).describe('the fields that were erased meanwhile'),
    keptUntil: z.string().nullable().describe('day until which the record is kept at least'),
    keptBecause: z.string().nullable(),
  }),
);
export type ErasureReceipt = z.output<typeof ErasureReceipt>;

export const OwnerView = z
  .object({
    id: z.uuid(),
    what: z.string(),
    since: Instant,
    owner: OwnerDetail.nullable().describe('null: erased, or narrowed to what a notice needs'),
    narrowedAt: Instant.nullable(),
    erasedAt: Instant.nullable(),
  })
  .meta({ id: 'OwnerView' });
export type OwnerView = z.output<typeof OwnerView>;

/** An item with a serial number, fitted to a hull. */
export const FitItem = Envelope.extend({
  what: Text.describe('what it is, such as engine'),
  serial: Code,
  maker: Text.optional(),
  customerSupplied: z.boolean().default(false),
  note: Text.optional(),
}).meta({ id: 'FitItem' });
export type FitItem = z.output<typeof FitItem>;
export const FittedReceipt = receipt(
  'FittedReceipt',
  z.object({ serial: z.string(), nonconformities: z.array(Nonconformity), warnings: z.array(z.string()) }),
);
export type FittedReceipt = z.output<typeof FittedReceipt>;

export const RemoveItem = Envelope.extend({ reason: Text }).meta({ id: 'RemoveItem' });
export type RemoveItem = z.output<typeof RemoveItem>;
export const RemovedReceipt = receipt('RemovedReceipt', z.object({ removed: z.literal(true) }));
export type RemovedReceipt = z.output<typeof RemovedReceipt>;

export const FittedItemsQuery = z
  .object({ serial: Code.optional(), hull: Code.optional() })
  .refine((query) => query.serial !== undefined || query.hull !== undefined, {
    path: ['serial'],
    message: 'name a serial number or a hull',
  });
export type FittedItemsQuery = z.output<typeof FittedItemsQuery>;
export const FittedItemView = z
  .object({
    id: z.uuid(),
    what: z.string(),
    serial: z.string(),
    maker: z.string().nullable(),
    customerSupplied: z.boolean(),
    note: z.string().nullable(),
    hull: z.string(),
    fittedAt: Instant,
    removedAt: Instant.nullable(),
    removedBecause: z.string().nullable(),
  })
  .meta({ id: 'FittedItemView' });
export type FittedItemView = z.output<typeof FittedItemView>;

/** Corrects a HIN that is affixed; without the authority for it nobody may. */
export const CorrectHin = Envelope.extend({
  hin: Code,
  reason: Text,
  authority: Text.describe('who authorised it, with number and date of the letter'),
}).meta({ id: 'CorrectHin' });
export type CorrectHin = z.output<typeof CorrectHin>;
