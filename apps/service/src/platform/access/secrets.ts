import { createHash, randomInt, timingSafeEqual } from 'node:crypto';

/** The digest under which a secret of ours is kept. It has 60 bits or more by chance, so that one round is enough. */
export const digestOfSecret = (secret: string): Buffer => createHash('sha256').update(secret).digest();

export const sameText = (one: string, other: string): boolean =>
  timingSafeEqual(digestOfSecret(one), digestOfSecret(other));

/** Letters and digits that are not taken for each other. */
const ALPHABET = '23456789ABCDEFGHJKMNPQRSTVWXYZ';

/** A code to be typed once: twelve of thirty signs, 58 bits, in three groups. */
export const newOneTimeCode = (): string =>
  Array.from({ length: 3 }, () => Array.from({ length: 4 }, () => ALPHABET[randomInt(ALPHABET.length)]).join('')).join(
    '-',
  );

/** What somebody typed as it was given: in capitals, without what stands between the groups. */
export const typedCode = (typed: string): string => {
  const signs = typed.toUpperCase().replace(/[^0-9A-Z]/g, '');
  return signs.replace(/(.{4})(?=.)/g, '$1-');
};
