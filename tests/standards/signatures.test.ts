import { describe, expect, it } from '@jest/globals';
import { createPrivateKey, createPublicKey } from 'node:crypto';
import { publicKeyOf, signatureOf, verifySignature } from '@hull-record/evidence';
import { publishedCases } from '../support/published-cases.js';

publishedCases('signatures');

const pem = (kind: string, body: string): string => `-----BEGIN ${kind} KEY-----\n${body}\n-----END ${kind} KEY-----\n`;

describe('keys in files', () => {
  // RFC 8410, sections 10.1 and 10.3; the private one from memory: a wrong digit would give another public key.
  const publicKey = createPublicKey(pem('PUBLIC', 'MCowBQYDK2VwAyEAGb9ECWmEzf6FQbrBZ9w7lshQhqowtrbLDFw4rXAxZuE='));
  const privateKey = createPrivateKey(
    pem('PRIVATE', 'MC4CAQAwBQYDK2VwBCIEINTuctv5E1hK1bbY8fdp+K06/nwoy/HU++CXqI9EdVhC'),
  );

  it('the key pair of RFC 8410, section 10, is one', () => {
    expect(publicKeyOf(privateKey)).toEqual(publicKeyOf(publicKey));
    expect(Buffer.from(publicKeyOf(publicKey)).toString('hex')).toBe(
      '19bf44096984cdfe8541bac167dc3b96c85086aa30b6b6cb0c5c38ad703166e1',
    );
    const message = Buffer.from('a message');
    expect(verifySignature(message, signatureOf(message, privateKey), publicKeyOf(publicKey))).toBe(true);
  });
});
