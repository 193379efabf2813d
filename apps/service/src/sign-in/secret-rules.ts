import { InvalidRequest } from '../platform/refusals.js';

export type SecretKind = 'pin' | 'passphrase';

/** Digits alone are a PIN, whatever else a passphrase. */
export const kindOf = (secret: string): SecretKind => (/^\d+$/.test(secret) ? 'pin' : 'passphrase');

const PIN_DIGITS = { least: 6, most: 16 };
const PASSPHRASE_LEAST = 12;

/**
 * Why a secret is too weak, or null.
 *
 * NIST SP 800-63B asks for no mixture of signs and for no expiry, for length and that the commonest be refused (from
 * memory). A PIN serves only at an enrolled device and is locked after a few wrong tries.
 */
export const weakness = (secret: string): string | null => {
  if (kindOf(secret) === 'passphrase') {
    const signs = [...secret];
    if (signs.length < PASSPHRASE_LEAST)
      return `A passphrase has ${PASSPHRASE_LEAST} characters or more; digits alone are a PIN.`;
    return new Set(signs).size < 5
      ? 'A passphrase of so few different characters is guessed at once: choose another.'
      : null;
  }
  const { least, most } = PIN_DIGITS;
  if (secret.length < least || secret.length > most) return `A PIN has ${least} to ${most} digits.`;
  return isPattern(secret)
    ? 'A PIN of one digit, of a run or of a repeated pair is guessed at once: choose another.'
    : null;
};

const isPattern = (pin: string): boolean => {
  const steps = new Set([...pin].slice(1).map((digit, i) => (Number(digit) - Number(pin[i]) + 10) % 10));
  const isRun = steps.size === 1 && [0, 1, 9].includes([...steps][0] as number);
  return isRun || /^(\d{1,3})\1+$/.test(pin);
};

/** @throws InvalidRequest naming the field and what to do */
export const assertStrong = (secret: string): void => {
  const detail = weakness(secret);
  if (detail !== null) throw new InvalidRequest([{ pointer: '/secret', detail }]);
};
