import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { createHash, createPublicKey, createSecretKey, generateKeyPairSync } from 'node:crypto';
import { keyIdOf, privateKeyOf, publicKeyOf, signatureOf, verifySignature } from '@hull-record/evidence';
import { turned } from '../../support/grown-tree.js';

const seed = fc.uint8Array({ minLength: 32, maxLength: 32 });
const message = fc.uint8Array({ maxLength: 80 });

describe('a signature', () => {
  it('verifies by the key that made it, and not with a bit turned in the message, itself or the key', () => {
    fc.assert(
      fc.property(seed, message, fc.nat(511), (secret, text, bit) => {
        const key = privateKeyOf(secret);
        const [publicKey, signature] = [publicKeyOf(key), signatureOf(text, key)];
        expect(verifySignature(text, signature, publicKey)).toBe(true);
        expect(verifySignature(text, turned(signature, bit), publicKey)).toBe(false);
        expect(verifySignature(text, signature, turned(publicKey, bit))).toBe(false);
        if (text.length > 0) expect(verifySignature(turned(text, bit), signature, publicKey)).toBe(false);
      }),
    );
  });

  it('is false, not an error, for bytes that are no key and no signature', () => {
    const any = fc.uint8Array({ maxLength: 70 });
    const key = fc.oneof(any, seed, fc.constant(new Uint8Array(32).fill(0xff)));
    fc.assert(
      fc.property(message, any, key, (text, signature, publicKey) => {
        expect(verifySignature(text, signature, publicKey)).toBe(false);
      }),
    );
    const all = (length: number, fill: number): Uint8Array => new Uint8Array(length).fill(fill);
    expect(verifySignature(all(3, 1), all(64, 0xff), all(32, 0xff))).toBe(false);
  });
});

describe('a key', () => {
  it('has SHA-256 of its public bytes as its id', () => {
    const publicKey = publicKeyOf(privateKeyOf(new Uint8Array(32)));
    expect(keyIdOf(publicKey)).toBe(createHash('sha256').update(publicKey).digest('hex'));
  });

  it('is the same from its private and its public form', () => {
    const key = privateKeyOf(new Uint8Array(32).fill(7));
    expect(publicKeyOf(createPublicKey(key))).toEqual(publicKeyOf(key));
  });

  const { privateKey: other } = generateKeyPairSync('x25519');
  const { publicKey } = generateKeyPairSync('ed25519');

  it.each<[string, () => unknown]>([
    ['a seed that is too short', () => privateKeyOf(new Uint8Array(31))],
    ['a seed that is too long', () => privateKeyOf(new Uint8Array(33))],
    ['a public key of another kind', () => publicKeyOf(other)],
    ['a secret that is no key pair', () => publicKeyOf(createSecretKey(new Uint8Array(32)))],
    ['a private key of another kind to sign with', () => signatureOf(new Uint8Array(), other)],
    ['a public key to sign with', () => signatureOf(new Uint8Array(), publicKey)],
  ])('is refused: %s', (_what, act) => {
    expect(act).toThrow(RangeError);
  });
});
