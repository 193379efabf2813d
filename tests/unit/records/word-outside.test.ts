import { describe, expect, it } from '@jest/globals';
import { wordOutside } from '../../../apps/service/src/records/word-outside.js';

const TOLD = { outside: { at: 'Yard', toldBy: 'invoice 118' }, reporter: null, note: null, photos: [] };
const SHA = '0123456789abcdef'.repeat(4);

describe('what a paper says of a repair that was done elsewhere', () => {
  it.each([
    ['one of the plant', { ...TOLD, outside: null }, false, null],
    [
      'what little is known',
      TOLD,
      false,
      { done: 'day not known', material: 'not known', knownFrom: 'invoice 118', note: null, photos: '' },
    ],
    ['lots of the plant in the place of words', TOLD, true, { material: '' }],
    [
      'all that a dealer told',
      {
        outside: { ...TOLD.outside, when: '2026-01-03', material: 'vinyl ester', evidence: 'work sheet' },
        ...{ reporter: 'Northlight Marine (NLM)', note: 'struck a piling' },
        photos: [
          { id: '1', shows: 'before' as const, originalSha256: SHA, redactedOn: null },
          { id: '2', shows: 'laid up' as const, originalSha256: SHA, redactedOn: '2026-02-01' },
        ],
      },
      false,
      {
        ...{ done: '2026-01-03', material: 'as told: vinyl ester', note: 'struck a piling' },
        knownFrom: 'invoice 118; evidence: work sheet; reported by Northlight Marine (NLM)',
        photos:
          '2 photos, SHA-256 of the original begins 0123456789ab (before), 0123456789ab (laid up, redacted on 2026-02-01)',
      },
    ],
  ])('is %s', (_what, told, hasLots, said) => {
    const worded = wordOutside(told, hasLots);
    if (said === null) expect(worded).toBeNull();
    else expect(worded).toMatchObject(said);
  });
});
