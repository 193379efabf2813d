import { z } from 'zod';
import { Code, Envelope, Instant, receipt, Text } from '../envelope.js';
import { ROLES } from '../people.js';

export const GrantRole = Envelope.extend({
  role: z.enum(ROLES),
  dealer: Code.optional().describe('the dealer for whom a person with the role dealer looks; for that role alone'),
}).meta({ id: 'GrantRole' });
export type GrantRole = z.output<typeof GrantRole>;

export const EndRole = Envelope.extend({ role: z.enum(ROLES), reason: Text }).meta({ id: 'EndRole' });
export type EndRole = z.output<typeof EndRole>;

export const RoleChanged = receipt('RoleChanged', z.object({ badge: z.string(), role: z.enum(ROLES) }));

export const RevokeDevice = Envelope.extend({ reason: Text }).meta({ id: 'RevokeDevice' });
export type RevokeDevice = z.output<typeof RevokeDevice>;

export const RevokedDevice = receipt('RevokedDevice', z.object({ device: z.string() }));

/** An entry that a device sent in the name of somebody who had not taken it over with a PIN. */
export const UnprovedEntry = z
  .object({
    id: z.uuid(),
    kind: z.string().describe('what was recorded, in words'),
    enteredBy: z.string(),
    device: z.string(),
    at: Instant,
    parts: z.array(z.string()),
    refused: z.string().nullable().describe('why the person said that it is not theirs'),
  })
  .meta({ id: 'UnprovedEntry' });
export type UnprovedEntry = z.output<typeof UnprovedEntry>;

export const ConfirmEntry = Envelope.extend({
  confirmed: z.boolean().describe('whether it is of the person who confirms'),
  reason: Text.optional().describe('why not; needed when it is refused'),
}).meta({ id: 'ConfirmEntry' });
export type ConfirmEntry = z.output<typeof ConfirmEntry>;

export const EntryConfirmed = receipt('EntryConfirmed', z.object({ confirmed: z.boolean() }));

/** What a revoked device sent, kept for quality to admit or to set aside. */
export const KeptEntry = z
  .object({
    id: z.uuid(),
    device: z.string(),
    enteredBy: z.string().nullable(),
    receivedAt: Instant,
    path: z.string(),
    body: z.unknown(),
    decided: z.object({ admitted: z.boolean(), by: z.string(), at: Instant, reason: z.string() }).nullable(),
  })
  .meta({ id: 'KeptEntry' });
export type KeptEntry = z.output<typeof KeptEntry>;

export const DecideOnEntry = Envelope.extend({ admitted: z.boolean(), reason: Text }).meta({ id: 'DecideOnEntry' });
export type DecideOnEntry = z.output<typeof DecideOnEntry>;

export const EntryDecided = receipt(
  'EntryDecided',
  z.object({
    admitted: z.boolean(),
    answer: z.unknown().describe('what the service answered to the entry, when it was admitted'),
  }),
);
