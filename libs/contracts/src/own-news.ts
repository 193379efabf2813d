import { z } from 'zod';
import { ChangedValue } from './certificates.js';
import { Envelope, Instant, receipt } from './envelope.js';
import { NoticeContents } from './notices.js';

/** What a dealer is told of an own hull: a letter of a notice, or that a certificate was withdrawn. */
export const OwnNews = z
  .object({
    id: z.uuid(),
    what: z.enum(['notice', 'certificate withdrawn']),
    hull: z.string(),
    at: Instant,
    notice: z.string().nullable(),
    contents: NoticeContents.nullable(),
    certificate: z.string().nullable().describe('its number'),
    issue: z.number().int().nullable(),
    changed: z.array(ChangedValue).nullable().describe('printed values that are not on record so any more'),
    acknowledgedAt: Instant.nullable(),
  })
  .meta({ id: 'OwnNews' });
export type OwnNews = z.output<typeof OwnNews>;

export const Acknowledge = Envelope.extend({ about: z.uuid().describe('id of what was told') }).meta({
  id: 'Acknowledge',
});
export type Acknowledge = z.output<typeof Acknowledge>;
export const AcknowledgedReceipt = receipt('AcknowledgedReceipt', z.object({ acknowledged: z.literal(true) }));
