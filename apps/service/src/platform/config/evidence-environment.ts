import { z } from 'zod';

/** The settings of the sealed journal: its keys, and where its signed heads are sent. */
export const EvidenceEnvironment = z.object({
  KEYS_DIR: z.string().min(1).optional(),
  HEADS_EVERY_MINUTES: z.coerce.number().int().min(1).max(10_080).default(60),
  HEADS_FOLDER: z.string().min(1).optional(),
  HEADS_WEBHOOK: z.url({ protocol: /^https?$/ }).optional(),
  HEADS_MAIL_TO: z.string().min(3).optional(),
  HEADS_MAIL_FROM: z.string().min(3).optional(),
  CERTIFICATE_KEY: z.string().min(1).optional(),
  CERTIFICATE_KEY_PASSPHRASE: z.string().default(''),
  SMTP_URL: z.url({ protocol: /^smtps?$/ }).optional(),
});
type EvidenceSet = z.output<typeof EvidenceEnvironment>;

/** Where heads are sent by mail. */
export interface MailWay {
  readonly smtpUrl: string;
  readonly from: string;
  readonly to: string;
}

/** How the journal is sealed: null where a way is not asked for. */
export interface EvidenceConfig {
  readonly keysDir: string;
  readonly headsEveryMinutes: number;
  /** PKCS #12 file that signs certificates, of the plant's own; null: one is made. */
  readonly signer: { readonly file: string; readonly passphrase: string } | null;
  readonly folder: string | null;
  readonly webhook: string | null;
  readonly mail: MailWay | null;
}

/**
 * Reads the settings of the sealed journal.
 *
 * @param besides where keys lie unless it is said: outside the database
 * @returns a sentence in place of settings that are incomplete
 */
export const readEvidence = (set: EvidenceSet, besides: string): EvidenceConfig | string => {
  const { SMTP_URL: smtpUrl, HEADS_MAIL_FROM: from, HEADS_MAIL_TO: to } = set;
  const given = [smtpUrl, from, to].filter((value) => value !== undefined);
  if (given.length > 0 && given.length < 3)
    return 'SMTP_URL, HEADS_MAIL_FROM, HEADS_MAIL_TO: heads are sent by mail when all three are set.';
  return {
    keysDir: set.KEYS_DIR ?? besides,
    headsEveryMinutes: set.HEADS_EVERY_MINUTES,
    signer: set.CERTIFICATE_KEY ? { file: set.CERTIFICATE_KEY, passphrase: set.CERTIFICATE_KEY_PASSPHRASE } : null,
    folder: set.HEADS_FOLDER ?? null,
    webhook: set.HEADS_WEBHOOK ?? null,
    mail: smtpUrl && from && to ? { smtpUrl, from, to } : null,
  };
};
