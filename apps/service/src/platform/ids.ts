import { createHash, randomBytes, randomUUID } from 'node:crypto';

/** A new random id (RFC 9562 version 4). */
export const newId = (): string => randomUUID();

/** A random secret of 192 bits, safe in a URL. */
export const newSecret = (): string => randomBytes(24).toString('base64url');

/** Whether a text is an id, however its letters are written. */
export const isUuid = (text: string): boolean => /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(text);

/** SHA-256 in hexadecimal. */
export const sha256 = (data: string | Buffer): string => createHash('sha256').update(data).digest('hex');

/**
 * The id of a row that belongs to a fact: the same for the same fact and place in it, so that a retry names the same rows.
 *
 * RFC 9562 version 8, with the first 122 free bits of a SHA-256.
 */
export const childId = (fact: string, name: string): string => {
  const hex = sha256(`${fact}/${name}`);
  const variant = ((parseInt(hex.charAt(16), 16) & 0x3) | 0x8).toString(16);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
};
