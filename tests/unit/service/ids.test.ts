import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { z } from 'zod';
import { childId, newId, newSecret, sha256 } from '../../../apps/service/src/platform/ids.js';

describe('ids', () => {
  it('of rows are UUIDs of RFC 9562, version 8 with its variant, that the contracts accept', () => {
    fc.assert(
      fc.property(fc.uuid(), fc.string(), (fact, name) => {
        const id = childId(fact, name);
        expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
        expect(z.uuid().safeParse(id).success).toBe(true);
      }),
    );
  });

  it('of rows are the same at every retry: they follow from the fact and the place in it, for ever', () => {
    const hash = sha256('f/1');
    const id = childId('f', '1').replaceAll('-', '');
    expect(id.slice(0, 12)).toBe(hash.slice(0, 12));
    expect(id.slice(13, 16)).toBe(hash.slice(13, 16));
    expect(id.slice(17)).toBe(hash.slice(17, 32));
    expect(parseInt(id.charAt(16), 16) & 0x3).toBe(parseInt(hash.charAt(16), 16) & 0x3);
  });

  it('of rows differ from row to row and from fact to fact', () => {
    const ids = ['a', 'b'].flatMap((fact) => Array.from({ length: 500 }, (_, n) => childId(fact, String(n))));
    expect(new Set(ids).size).toBe(1_000);
  });

  it('that are new are UUIDs, each another', () => {
    const ids = Array.from({ length: 100 }, newId);
    expect(new Set(ids).size).toBe(100);
    for (const id of ids) expect(z.uuid().safeParse(id).success).toBe(true);
  });

  it('that are secret have 192 bits and can stand in a URL', () => {
    const secret = newSecret();
    expect(secret).toMatch(/^[\w-]{32}$/);
    expect(newSecret()).not.toBe(secret);
  });

  it('hash as FIPS 180-4 shows for "abc"', () => {
    expect(sha256('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });
});
