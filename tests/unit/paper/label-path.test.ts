import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { LABELLED, labelPath, readLabelPath } from '@hull-record/contracts';

const code = fc.oneof(
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }),
  fc.string({ unit: 'binary', minLength: 1, maxLength: 60 }),
  fc.string({
    unit: fc.constantFrom(' ', '/', '%', '?', '#', '\\', '+', '.', 'Ü', '中', 'ש', '🚤', 'A'),
    minLength: 1,
  }),
);

describe('the path of a label', () => {
  it.each([
    ['lot', 'VE-2231', '/l/lot/VE-2231'],
    ['hull', '86/7 Ü', '/l/hull/86%2F7%20%C3%9C'],
  ] as const)('of the %s %s is %s', (of, named, path) => {
    expect(labelPath({ of, code: named })).toBe(path);
  });

  it('gives back what it was made of, whatever the code', () => {
    fc.assert(
      fc.property(fc.constantFrom(...LABELLED), code, (of, named) => {
        const path = labelPath({ of, code: named });
        expect(path).toMatch(/^\/l\/[a-z]+\/[!-.0-~]+$/);
        expect(readLabelPath(path)).toEqual({ of, code: named });
      }),
    );
  });

  it.each([
    '',
    '/',
    '/l/lot/',
    '/l/lot',
    '/l/mold/M-1',
    '/l/LOT/VE-1',
    '/l/lot/VE-1/',
    'l/lot/VE-1',
    '/l/lot/%',
    '/l/lot/%FF',
    'http://host/l/lot/VE-1',
  ])('is not "%s"', (path) => {
    expect(readLabelPath(path)).toBeNull();
  });

  it('is never read wrongly: a text that is read stands for what it says', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.webUrl(),
          code.map((text) => `/l/lot/${text}`),
        ),
        (text) => {
          const read = readLabelPath(text);
          if (read !== null) expect(readLabelPath(labelPath(read))).toEqual(read);
        },
      ),
    );
  });
});
