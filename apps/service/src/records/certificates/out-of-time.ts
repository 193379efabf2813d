import type { Signer } from './signing-key.js';

/** So long before its end whoever starts the service is told. */
const TOLD_DAYS = 60;
const DAY_MS = 86_400_000;

const REMEDY = 'Have it renewed, name the new one by CERTIFICATE_KEY, and start the service again.';

const day = (at: Date): string => at.toISOString().slice(0, 10);

/**
 * Why nothing can be signed at a time: every reader would call a signature outside the validity of its certificate wrong.
 *
 * @returns null when it can
 */
export const whyOutOfTime = (
  { validFrom, validTo }: Pick<Signer, 'validFrom' | 'validTo'>,
  at: Date,
): string | null => {
  if (at < validFrom) return `The certificate of the key that signs is valid from ${day(validFrom)} on. ${REMEDY}`;
  if (at > validTo) return `The certificate of the key that signs was valid until ${day(validTo)}. ${REMEDY}`;
  return null;
};

/** What is told at a start: that nothing can be signed, or soon cannot; null when all is well. Everything else goes on. */
export const toldAtStart = (signer: Pick<Signer, 'validFrom' | 'validTo'>, now: Date): string | null => {
  const why = whyOutOfTime(signer, now);
  if (why !== null) return `No certificate of a hull can be issued. ${why}`;
  const days = Math.floor((signer.validTo.getTime() - now.getTime()) / DAY_MS);
  return days > TOLD_DAYS
    ? null
    : `The certificate of the key that signs is valid until ${day(signer.validTo)}: then no certificate of a hull can be issued. ${REMEDY}`;
};
