import { describe, expect, it } from '@jest/globals';
import { createHash } from 'node:crypto';
import { canonicalJson } from '@hull-record/evidence';
import { bitsOf, numberFile } from '../support/number-file.js';
import { publishedCases } from '../support/published-cases.js';

publishedCases('canonical-json');

describe('the number file that RFC 8785, appendix B, points to', () => {
  it.each([
    [1_000, 'be18b62b6f69cdab33a7e0dae0d9cfa869fda80ddc712221570f9f40a5878687'],
    [10_000, 'b9f7a8e75ef22a835685a52ccba7f7d6bdc99e34b010992cbc5864cd12be6892'],
    [100_000, '22776e6d4b49fa294a0d0f349268e5c28808fe7e0cb2bcbe28f63894e494d4c7'],
  ])('has in its first %i lines the SHA-256 that is published with it', (lines, sha256) => {
    const hash = createHash('sha256');
    let line = 0;
    for (const value of numberFile()) {
      hash.update(`${bitsOf(value)},${canonicalJson(value)}\n`);
      if (++line === lines) break;
    }
    expect(hash.digest('hex')).toBe(sha256);
  });
});
