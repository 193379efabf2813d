import { z } from 'zod';
import { Envelope, Instant, receipt, Text } from './envelope.js';

/** What stands on every certificate, to the letter. */
export const CERTIFICATE_STATEMENT =
  "States what the builder recorded for this hull. Not a title document, Builder's Certification, statement of origin, declaration of conformity, survey, warranty, or statement of fitness or compliance.";

/** A layer as a certificate prints it. */
const CertifiedLayer = z.object({
  name: z.string(),
  materials: z.string().describe('materials by name, the first of the schedule first'),
  made: z.string().describe('day it was made'),
  readings: z.string().describe('lowest to highest of each kind of reading; empty when none was taken'),
});

/** What a certificate prints, and nothing else: recorded, sealed, and embedded in the PDF. */
export const CertificateContent = z
  .object({
    format: z.literal('hull-record/certificate/1'),
    plant: z.string(),
    number: z.string().describe('number of the certificate; the same for each issue'),
    issue: z.number().int().min(1),
    issuedOn: z.string(),
    hull: z.string(),
    hin: z.string().nullable(),
    model: z.string(),
    released: z.string(),
    parts: z.array(z.object({ part: z.string(), kind: z.string(), layers: z.array(CertifiedLayer) })),
    repaired: z.array(z.string()).describe('what was repaired and accepted'),
    concessions: z.array(z.string()),
    leftOut: z.array(z.string()).describe('how much did not find room, and is in the build record'),
    statement: z.string(),
    signedBy: z.string().describe('SHA-256 of the X.509 certificate that signs the PDF'),
  })
  .meta({ id: 'CertificateContent' });
export type CertificateContent = z.output<typeof CertificateContent>;

export const IssueCertificate = Envelope.meta({ id: 'IssueCertificate' });
export type IssueCertificate = z.output<typeof IssueCertificate>;

export const CertificateReceipt = receipt('CertificateReceipt', z.object({ content: CertificateContent }));

export const WithdrawCertificate = Envelope.extend({ reason: Text }).meta({ id: 'WithdrawCertificate' });
export type WithdrawCertificate = z.output<typeof WithdrawCertificate>;

export const WithdrawalReceipt = receipt('WithdrawalReceipt', z.object({ withdrawn: z.literal(true) }));

/** A value that a certificate prints, and what is on record in its place since a correction. */
export const ChangedValue = z
  .object({
    what: z.string().describe('where it is printed, such as a layer of a part'),
    printed: z.string(),
    now: z.string().nullable().describe('null: nothing'),
  })
  .meta({ id: 'ChangedValue' });
export type ChangedValue = z.output<typeof ChangedValue>;

export const CERTIFICATE_STATES = ['being made', 'current', 'replaced', 'withdrawn'] as const;

export const CertificateView = z
  .object({
    id: z.uuid(),
    number: z.string(),
    issue: z.number().int(),
    issuedAt: Instant,
    state: z.enum(CERTIFICATE_STATES),
    withdrawnFor: z.string().nullable(),
    becauseOf: z.uuid().nullable().describe('entry of the journal, such as a correction, that it was withdrawn for'),
    changed: z.array(ChangedValue).nullable().describe('printed values that are not on record so any more'),
    sha256: z.string().nullable().describe('of the finished file; null while it is being made'),
    file: z.string().nullable().describe('path of the PDF'),
  })
  .meta({ id: 'CertificateView' });
export type CertificateView = z.output<typeof CertificateView>;

/** What anybody may ask: by the code on the paper, with or without its number, or by the SHA-256 of a file. */
export const CheckCertificate = z
  .object({
    number: z.string().trim().max(40).optional(),
    code: z.string().trim().max(80).optional().describe('the code printed on the certificate, 26 letters and digits'),
    sha256: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .optional(),
  })
  .refine(
    ({ code, sha256 }) => (code === undefined) !== (sha256 === undefined),
    'give the code or the digest of a file',
  )
  .meta({ id: 'CheckCertificate' });
export type CheckCertificate = z.output<typeof CheckCertificate>;

export const CheckedCertificate = z
  .object({
    is: z.enum(['current', 'replaced', 'withdrawn', 'not known']),
    certificate: z
      .object({
        number: z.string(),
        issue: z.number().int(),
        issuedOn: z.string(),
        hull: z.string(),
        hin: z.string().nullable(),
        model: z.string(),
      })
      .nullable(),
    newestIssue: z.number().int().nullable(),
  })
  .meta({ id: 'CheckedCertificate' });
export type CheckedCertificate = z.output<typeof CheckedCertificate>;

/** What a dealer sees of the certificate of an own hull. */
export const OwnCertificate = z
  .object({
    number: z.string(),
    issue: z.number().int(),
    state: z.enum(['current', 'withdrawn']),
    file: z.string(),
    newIssueWaits: z.boolean().describe('something has to be settled before a new issue; the one there stays as it is'),
  })
  .nullable()
  .meta({ id: 'OwnCertificate' });
export type OwnCertificate = z.output<typeof OwnCertificate>;

export const JournalVerification = z
  .object({
    faults: z.array(
      z.object({
        what: z.enum(['changed', 'removed', 'added', 'reordered']),
        table: z.string(),
        id: z.string(),
        words: z.string(),
      }),
    ),
    plants: z.array(z.object({ plant: z.string(), sealed: z.number().int(), unsealed: z.number().int() })),
    says: z.array(z.string()).describe('what it proves, and what is not protected'),
  })
  .meta({ id: 'JournalVerification' });
