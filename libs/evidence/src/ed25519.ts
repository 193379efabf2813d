import { createPrivateKey, createPublicKey, type KeyObject, sign, verify } from 'node:crypto';
import { sha256, toHex } from './sha-256.js';

/** Bytes of a public key, and of the seed of a private one. */
export const KEY_BYTES = 32;
export const SIGNATURE_BYTES = 64;

/** What stands before the seed in a private key (PKCS #8): RFC 8410, section 7, and the example of section 10.3. */
const BEFORE_SEED = Buffer.from('302e020100300506032b657004220420', 'hex');

/**
 * The private key of a seed (RFC 8032, section 5.1.5).
 *
 * @param seed 32 random bytes, to be kept secret
 * @throws RangeError for another length
 */
export const privateKeyOf = (seed: Uint8Array): KeyObject => {
  if (seed.length !== KEY_BYTES) throw new RangeError('The seed of a key is 32 bytes.');
  return createPrivateKey({ key: Buffer.concat([BEFORE_SEED, seed]), format: 'der', type: 'pkcs8' });
};

/**
 * The 32 bytes of a public key (RFC 8032, section 5.1.5), from itself or from its private key.
 *
 * @throws RangeError for a key of another kind
 */
export const publicKeyOf = (key: KeyObject): Uint8Array => {
  if (key.asymmetricKeyType !== 'ed25519') throw new RangeError('The key is not one for Ed25519.');
  const { x } = (key.type === 'private' ? createPublicKey(key) : key).export({ format: 'jwk' });
  return Buffer.from(x ?? '', 'base64url');
};

/** Name of a public key: SHA-256 of its 32 bytes, in hexadecimal; what people compare, and trust. */
export const keyIdOf = (publicKey: Uint8Array): string => toHex(sha256(publicKey));

/**
 * Signature by Ed25519 (RFC 8032, section 5.1.6): 64 bytes, the same for the same key and message.
 *
 * @throws RangeError for a key that is not a private one for Ed25519
 */
export const signatureOf = (message: Uint8Array, key: KeyObject): Uint8Array => {
  if (key.type !== 'private' || key.asymmetricKeyType !== 'ed25519')
    throw new RangeError('The key is not a private one for Ed25519.');
  return sign(null, message, key);
};

/** Whether a signature is that of the holder of a public key (RFC 8032, section 5.1.7); false for what is malformed. */
export const verifySignature = (message: Uint8Array, signature: Uint8Array, publicKey: Uint8Array): boolean => {
  if (publicKey.length !== KEY_BYTES || signature.length !== SIGNATURE_BYTES) return false;
  const x = Buffer.from(publicKey).toString('base64url');
  // RFC 8037, section 2: a public key as JSON.
  return verify(null, message, createPublicKey({ key: { kty: 'OKP', crv: 'Ed25519', x }, format: 'jwk' }), signature);
};
